#include "baize/services/methods_review.h"

#include "methods_words.h"
#include "slices.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::services {
namespace {

std::map<std::string, std::vector<MethodWork>> works_by_method(const compare::Gathered& gathered) {
  std::map<std::tuple<std::string, units::Day, std::string, std::string>, int> counts;
  for (const compare::Look& look : gathered.looks) {
    for (const std::string& work : look.works) {
      ++counts[{look.method, look.day, look.club, work}];
    }
  }
  std::map<std::string, std::vector<MethodWork>> all;
  for (const auto& [key, looks] : counts) {
    const auto& [method, day, club, work] = key;
    all[method].push_back({club, work, day, looks});
  }
  return all;
}

void put_methods(MethodsReview& review, const compare::Gathered& gathered) {
  auto works = works_by_method(gathered);
  for (compare::MethodFigures& figures : review.comparison.methods) {
    MethodLine line;
    line.works = std::move(works[figures.method]);
    line.sentence = method_sentence(figures);
    line.figures = std::move(figures);
    review.methods.push_back(std::move(line));
  }
  review.comparison.methods.clear();
}

const compare::MethodFigures& figures_of(const MethodsReview& review, const std::string& method) {
  return std::find_if(review.methods.begin(), review.methods.end(),
                      [&](const MethodLine& line) { return line.figures.method == method; })
      ->figures;
}

void put_pairs(MethodsReview& review) {
  for (compare::PairFigures& pair : review.comparison.pairs) {
    PairOfMethods line;
    line.sentence =
        pair_sentence(pair, figures_of(review, pair.first), figures_of(review, pair.second),
                      review.query.compare.days_wanted);
    line.caution = caution(pair.evidence);
    line.figures = std::move(pair);
    review.pairs.push_back(std::move(line));
  }
  review.comparison.pairs.clear();
}

} // namespace

units::Result<MethodsReview> compare_methods(const std::vector<ClubShare>& clubs,
                                             const MethodsQuery& query, units::Day today) {
  auto problem = query.gather.problem();
  problem = problem ? problem : query.compare.problem();
  if (problem) {
    return units::Refusal(*problem);
  }
  MethodsReview review;
  review.query = query;
  compare::Gathered gathered;
  for (const ClubShare& club : clubs) {
    review.clubs.push_back(club.records.club.id);
    for (const green::Records& share : slices(club.records, today)) {
      compare::gather(share, club.weather, today, query.gather, gathered);
    }
  }
  review.comparison = compare::compare(gathered.looks, query.compare);
  put_methods(review, gathered);
  put_pairs(review);
  review.sentence = headline(review);
  review.notes = methods_notes(review, gathered);
  return review;
}

} // namespace baize::services
