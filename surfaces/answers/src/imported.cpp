#include "baize/answers/imported.h"

#include "baize/answers/problem.h"
#include "baize/answers/store.h"

namespace baize::answers {

namespace {

Json file_report(const services::FileReport& report) {
  return Object()
      .put("name", report.name)
      .put("rows", report.rows)
      .put("records", report.records)
      .put("problems", report.problems)
      .done();
}

} // namespace

Json to_json(const Imported& imported) {
  return Object()
      .put("dry_run", imported.dry_run)
      .nest("files", list(imported.files, file_report))
      .nest("problems", list(imported.problems, with_sentence))
      .nest("remarks", list(imported.remarks, with_sentence))
      .put("receipt", imported.receipt, to_json)
      .put("club", imported.club)
      .done();
}

Json to_json(const ImportedWeather& imported) {
  Json json = to_json(imported.file);
  json["mapping"] = list(imported.mapping);
  return json;
}

} // namespace baize::answers
