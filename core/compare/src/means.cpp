#include "means.h"

#include "baize/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace baize::compare::detail {

WorkMeans::WorkMeans(const std::vector<const Look*>& looks, const std::vector<int>& work,
                     Value value, double level) {
  struct Work {
    std::string method;
    double sum = 0;
    int looks = 0;
  };
  std::map<int, Work> works;
  for (std::size_t i = 0; i < looks.size(); ++i) {
    if (const auto& here = looks[i]->*value) {
      Work& one = works[work[i]];
      one.method = looks[i]->method;
      one.sum += *here;
      ++one.looks;
    }
  }
  for (const auto& [number, one] : works) {
    Mean& mean = methods_[one.method];
    mean.value += one.sum / one.looks;
    ++mean.works;
  }
  for (auto& [method, mean] : methods_) {
    mean.value /= mean.works;
  }
  double squares = 0;
  for (const auto& [number, one] : works) {
    const double off = one.sum / one.looks - methods_[one.method].value;
    squares += off * off;
  }
  df_ = static_cast<int>(works.size()) - static_cast<int>(methods_.size());
  if (df_ > 0) {
    variance_ = squares / df_;
    reach_ = stats::t_quantile((1 + level) / 2, df_);
  }
}

Figure WorkMeans::with_interval(double value, double per_work) const {
  if (df_ < 1) {
    return {value, std::nullopt, std::nullopt};
  }
  const double far = reach_ * std::sqrt(variance_ * per_work);
  return {value, value - far, value + far};
}

std::optional<Figure> WorkMeans::of(const std::string& method) const {
  const auto found = methods_.find(method);
  if (found == methods_.end()) {
    return std::nullopt;
  }
  Figure figure = with_interval(found->second.value, 1.0 / found->second.works);
  if (figure.low) {
    figure.low = std::max(0.0, *figure.low); // neither a fall nor a loss is below 0
  }
  return figure;
}

std::optional<Figure> WorkMeans::between(const std::string& first,
                                         const std::string& second) const {
  const auto a = methods_.find(first);
  const auto b = methods_.find(second);
  if (a == methods_.end() || b == methods_.end()) {
    return std::nullopt;
  }
  return with_interval(b->second.value - a->second.value,
                       1.0 / a->second.works + 1.0 / b->second.works);
}

} // namespace baize::compare::detail
