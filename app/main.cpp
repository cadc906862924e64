#include <iostream>

#include "app/verbs/run_verb.h"
#ifdef ZYGAPOSE_WINDOW
#include "app/window/run_window.h"
#endif

int main(int argc, char** argv) {
  if (argc > 1 && zyga::app::isVerb(argv[1])) return zyga::app::runVerb(argc, argv);
#ifdef ZYGAPOSE_WINDOW
  return zyga::app::runWindow(argc, argv);
#else
  std::cerr << "zygapose: built without its window; zygapose help tells the batch verbs\n";
  return 2;
#endif
}
