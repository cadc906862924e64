#pragma once

#include <cstddef>
#include <functional>

#include "core/task/task.h"

namespace zyga::task {

/// Calls `work(i)` for every i below `count`, many at once on the cores that are free; what the calls do may not hang
/// on their order. Tells the task the share of calls done, one telling at a time, counting up. False when the task was
/// cancelled before all were done. An exception that leaves a call keeps others from beginning and is thrown on.
bool forEach(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work);

}  // namespace zyga::task
