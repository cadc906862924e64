#include "app/verbs/run_verb.h"
#include "app/window/run_window.h"

int main(int argc, char** argv) {
  if (argc > 1 && zyga::app::isVerb(argv[1])) return zyga::app::runVerb(argc, argv);
  return zyga::app::runWindow(argc, argv);
}
