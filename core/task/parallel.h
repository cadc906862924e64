#pragma once

#include <cstddef>
#include <functional>

#include "core/task/task.h"

namespace zyga::task {

/// Cores that this process may use, at least 1.
unsigned cores();

/// Calls `work(i)` for every i below `count`, many at once on the threads of oneTBB's one pool and the calling thread,
/// at most task.threads() of them; what the calls do may not hang on their order. Tells the task the share of calls
/// done, one telling at a time, counting up. False when the task was cancelled before all were done; calls that have
/// begun end first. An exception that leaves a call keeps others from beginning and is thrown on. A call may itself use
/// forEach. Threads that help take over the priority of the calling thread where it is the lower one.
bool forEach(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work);

}  // namespace zyga::task
