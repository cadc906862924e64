#pragma once

#include <QByteArray>
#include <QRectF>
#include <QTransform>
#include <vector>

namespace zyga::app::test {

/// The compressed streams of a PDF that draw, inflated (ISO 32000-1, 7.3.8 and 7.4.4). Others, as its metadata, are
/// kept as they are and draw nothing.
inline QByteArray contentOf(const QByteArray& pdf) {
  QByteArray all;
  for (qsizetype at = pdf.indexOf("\nstream\n"); at >= 0; at = pdf.indexOf("\nstream\n", at)) {
    const QByteArray dictionary = pdf.mid(pdf.lastIndexOf("obj", at), at - pdf.lastIndexOf("obj", at));
    const qsizetype from = at + 8;
    at = pdf.indexOf("endstream", from);
    if (at < 0) break;
    if (!dictionary.contains("/FlateDecode")) continue;
    // qUncompress wants a length in front, which is only a guess.
    const QByteArray inflated = qUncompress(QByteArray::fromHex("00100000") + pdf.mid(from, at - from));
    if (inflated.contains(" m\n") || inflated.contains(" cm\n")) all += inflated + "\n";
  }
  return all;
}

/// Boxes around every painted path, in points from the lower left of the page, by the path operators of ISO 32000-1,
/// 8.4.4 and 8.5.
inline std::vector<QRectF> pathBoxes(const QByteArray& pdf) {
  std::vector<QRectF> boxes;
  std::vector<QTransform> saved;
  QTransform now;
  std::vector<double> numbers;
  double left = 1e9, right = -1e9, bottom = 1e9, top = -1e9;
  const auto add = [&](double x, double y) {
    const QPointF p = now.map(QPointF(x, y));
    left = std::min(left, p.x());
    right = std::max(right, p.x());
    bottom = std::min(bottom, p.y());
    top = std::max(top, p.y());
  };
  for (const QByteArray& word : contentOf(pdf).simplified().split(' ')) {
    bool isNumber = false;
    const double number = word.toDouble(&isNumber);
    if (isNumber) {
      numbers.push_back(number);
      continue;
    }
    const std::size_t n = numbers.size();
    if (word == "q") saved.push_back(now);
    if (word == "Q" && !saved.empty()) {
      now = saved.back();
      saved.pop_back();
    }
    if (word == "cm" && n >= 6)
      now = QTransform(numbers[n - 6], numbers[n - 5], numbers[n - 4], numbers[n - 3], numbers[n - 2], numbers[n - 1]) *
            now;
    if ((word == "m" || word == "l") && n >= 2) add(numbers[n - 2], numbers[n - 1]);
    if (word == "c" && n >= 6)
      for (const std::size_t i : {n - 6, n - 4, n - 2}) add(numbers[i], numbers[i + 1]);
    if (word == "re" && n >= 4) {
      add(numbers[n - 4], numbers[n - 3]);
      add(numbers[n - 4] + numbers[n - 2], numbers[n - 3] + numbers[n - 1]);
    }
    if (word == "f" || word == "f*" || word == "S" || word == "s" || word == "B" || word == "B*" || word == "b" ||
        word == "b*" || word == "n") {
      if (left <= right && word != "n") boxes.emplace_back(left, bottom, right - left, top - bottom);
      left = bottom = 1e9;
      right = top = -1e9;
    }
    numbers.clear();
  }
  return boxes;
}

}  // namespace zyga::app::test
