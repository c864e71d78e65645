#pragma once

#include "baize/units/day.h"
#include "json.h"

#include <initializer_list>

namespace baize::wasm {

/// Reads the fields of an object and keeps the first problem met. A field that
/// is left out and one that is null are the same: not known.
///
///   Reader reader(takes);
///   const auto text = reader.need_text("text");
///   if (reader.problem()) { return reader.refusal(); }
class Reader {
 public:
  /// `json` must outlive the reader. "wrong_type" unless it is an object.
  explicit Reader(const Read& json, std::string place = {});
  Reader(const Read&&, std::string = {}) = delete;

  std::optional<double> number(const char* field);
  /// 7.0 is whole, 7.5 is refused: "not_a_whole_number".
  std::optional<int> whole(const char* field);
  std::optional<std::string> text(const char* field);
  /// One of `words`, else "not_a_known_word".
  std::optional<std::string> word(const char* field, std::initializer_list<const char*> words);
  /// A list or an object; null where the field is not known.
  const Read* list(const char* field);
  const Read* object(const char* field);

  // The same where the field must be known: "missing_value". What they give
  // means nothing once there is a problem.
  double need_number(const char* field);
  std::string need_text(const char* field);
  std::string need_word(const char* field, std::initializer_list<const char*> words);
  const Read* need_list(const char* field);
  /// YYYY-MM-DD.
  units::Day need_day(const char* field);

  /// Keeps the problem if it is the first.
  void refuse(units::Problem problem);
  /// Takes over another reader's problem.
  void join(const Reader& other);
  const std::optional<units::Problem>& problem() const { return problem_; }
  units::Refusal refusal() const { return units::Refusal(*problem_); }

 private:
  const Read* find(const char* field);
  void wrong_type(const char* field, const Read& found, const char* rule);
  void missing(const char* field, const char* rule);

  const Read& json_;
  std::string place_;
  std::optional<units::Problem> problem_;
};

/// For a problem's sentence: a number or word as it was written (up to 60
/// bytes), "a list", "an object".
std::string shown(const Read& json);

} // namespace baize::wasm
