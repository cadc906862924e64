#pragma once

namespace zyga::app {

/// Opens the window and runs until it is closed. Arguments: [FILE] [--dark|--light] [--size WxH] [--frame BONE]
/// [--screenshot FILE.png] [--tell-start]. With --screenshot the window is pictured once its bones have arrived, with
/// --tell-start it says when they are drawn; then it is closed. Returns the exit status: 0, or 2 for arguments that
/// make no sense.
int runWindow(int argc, char** argv);

}  // namespace zyga::app
