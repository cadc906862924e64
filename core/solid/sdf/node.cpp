#include "core/solid/sdf/node.h"

namespace zyga::solid {

FieldNode::Local FieldNode::near(const NodePtr& self, const Place& place) const { return {self, at(place.centre)}; }

float FieldNode::at(const Eigen::Vector3f& p) const {
  float out = 0;
  evaluate({&p.x(), &p.y(), &p.z(), 1}, &out);
  return out;
}

ToLocal::ToLocal(const Frame& frame) {
  const Eigen::Matrix<double, 3, 4> inverse = frame.inverse(Eigen::Isometry).matrix().topRows<3>();
  for (int r = 0; r < 3; ++r)
    for (int c = 0; c < 4; ++c) m[static_cast<std::size_t>(4 * r + c)] = static_cast<float>(inverse(r, c));
}

Box placedBox(const Frame& frame, const Box& local) {
  Box box;
  if (local.isEmpty()) return box;
  for (int i = 0; i < 8; ++i) box.extend(frame * local.corner(static_cast<Box::CornerType>(i)));
  return box;
}

}  // namespace zyga::solid
