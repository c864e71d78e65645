#include "mixed_classes.h"

#include <algorithm>
#include <utility>

namespace baize::stats::detail {

/// One group of the first term.
struct MixedClasses::Group {
  int place = 0;
  int of_class = 0;
  std::vector<double> c;
  const double* response = nullptr;
};

MixedClasses::MixedClasses(const MixedDesign& design, const MixedMoments& moments,
                           const MixedRest& rest)
    : size_(rest.size()), columns_(design.q.cols() + 1) {
  const bool one_effect = std::all_of(design.terms.begin(), design.terms.end(),
                                      [](const Grouping& term) { return term.columns == 1; });
  if (!one_effect || !rest.dense()) {
    return;
  }
  const std::vector<Group> groups = make_classes(moments, design.terms.front().groups);
  groups_ = Eigen::VectorXd::Zero(u_.size());
  for (const Group& group : groups) {
    groups_(group.of_class) += 1;
  }
  put_responses(groups, rest);
  if (!put_pairs(groups, rest)) {
    u_.resize(0);
  }
}

/// Finds the classes; gives the groups class by class.
std::vector<MixedClasses::Group> MixedClasses::make_classes(const MixedMoments& moments,
                                                            int groups) {
  const std::vector<double>& own = moments.cross.front().value;
  std::vector<double> classes = own;
  std::sort(classes.begin(), classes.end());
  classes.erase(std::unique(classes.begin(), classes.end()), classes.end());
  u_ = Eigen::Map<const Eigen::VectorXd>(classes.data(), static_cast<Eigen::Index>(classes.size()));
  std::vector<Group> all;
  for (int g = 0; g < groups; ++g) {
    const auto found =
        std::lower_bound(classes.begin(), classes.end(), own[static_cast<std::size_t>(g)]);
    Group group{g,
                static_cast<int>(found - classes.begin()),
                {},
                &moments.response.front()[static_cast<std::size_t>(g * columns_)]};
    for (int t = 1; t < moments.terms; ++t) {
      const Cross& cross = moments.cross[moments.index(0, t)];
      group.c.insert(group.c.end(), cross.value.begin() + cross.start[g],
                     cross.value.begin() + cross.start[g + 1]);
    }
    all.push_back(std::move(group));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Group& a, const Group& b) { return a.of_class < b.of_class; });
  return all;
}

std::size_t MixedClasses::pair_at(int row, int column) const {
  const auto j = static_cast<std::size_t>(column);
  return j * static_cast<std::size_t>(size_) - j * (j + 1) / 2 + static_cast<std::size_t>(row);
}

void MixedClasses::put_responses(const std::vector<Group>& groups, const MixedRest& rest) {
  with_response_ = Eigen::MatrixXd::Zero(size_ * columns_, u_.size());
  responses_ = Eigen::MatrixXd::Zero(columns_ * columns_, u_.size());
  for (const Group& group : groups) {
    const auto met = rest.met(group.place);
    double* with_response = with_response_.col(group.of_class).data();
    for (Eigen::Index k = 0; k < columns_; ++k) {
      for (std::size_t j = 0; j < met.size(); ++j) {
        with_response[k * size_ + met[j]] += group.c[j] * group.response[k];
      }
      for (Eigen::Index i = k; i < columns_; ++i) {
        responses_(k * columns_ + i, group.of_class) += group.response[i] * group.response[k];
      }
    }
  }
}

/// False where they are too many.
bool MixedClasses::put_pairs(const std::vector<Group>& groups, const MixedRest& rest) {
  const auto all = static_cast<std::size_t>(size_ * (size_ + 1) / 2);
  // Once to count what each entry holds, once to put it in.
  std::vector<int> last(all, -1);
  pair_start_.assign(all + 1, 0);
  const auto each = [&](const auto& use) {
    for (const Group& group : groups) {
      const auto met = rest.met(group.place);
      for (std::size_t j = 0; j < met.size(); ++j) {
        for (std::size_t i = j; i < met.size(); ++i) {
          use(pair_at(met[i], met[j]), group.of_class, group.c[i] * group.c[j]);
        }
      }
    }
  };
  each([&](std::size_t entry, int of_class, double) {
    pair_start_[entry + 1] += last[entry] == of_class ? 0 : 1;
    last[entry] = of_class;
  });
  for (std::size_t entry = 0; entry < all; ++entry) {
    pair_start_[entry + 1] += pair_start_[entry];
  }
  constexpr std::size_t kMostPairs = 4'000'000; // 48 MB
  if (pair_start_.back() > kMostPairs) {
    return false;
  }
  pair_class_.resize(pair_start_.back());
  pair_.resize(pair_class_.size());
  std::vector<std::size_t> end(pair_start_.begin(), pair_start_.end() - 1);
  each([&](std::size_t entry, int of_class, double product) {
    const bool known = end[entry] > pair_start_[entry] && pair_class_[end[entry] - 1] == of_class;
    const std::size_t at = known ? end[entry] - 1 : end[entry]++;
    pair_class_[at] = of_class;
    pair_[at] = known ? pair_[at] + product : product;
  });
  return true;
}

double MixedClasses::take(const Factors& t, Eigen::MatrixXd& cross, MixedRest& rest) const {
  const double square = t.front().front() * t.front().front();
  const Eigen::VectorXd weight = square / (1 + square * u_.array());
  const Eigen::VectorXd responses = responses_ * weight;
  cross.triangularView<Eigen::Lower>() -=
      Eigen::Map<const Eigen::MatrixXd>(responses.data(), columns_, columns_);
  if (size_ > 0) {
    Eigen::VectorXd pairs(static_cast<Eigen::Index>(pair_start_.size()) - 1);
    const double* const weights = weight.data();
    std::size_t at = 0;
    for (Eigen::Index entry = 0; entry < pairs.size(); ++entry) {
      double sum = 0;
      for (const auto end = pair_start_[static_cast<std::size_t>(entry) + 1]; at < end; ++at) {
        sum += weights[pair_class_[at]] * pair_[at];
      }
      pairs(entry) = sum;
    }
    const Eigen::VectorXd with_response = with_response_ * weight;
    rest.subtract(pairs, Eigen::Map<const Eigen::MatrixXd>(with_response.data(), size_, columns_),
                  t);
  }
  return groups_.dot((square * u_.array()).log1p().matrix());
}

} // namespace baize::stats::detail
