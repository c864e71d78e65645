#include "table.h"

namespace baize::assets {

namespace {
constexpr std::string_view kPage = R"(<!doctype html>
<html lang="en"><meta charset="utf-8"><title>Baize</title>
<h1>The pages were not built in</h1>
<p>This program was built with BAIZE_WEB=OFF. Build it with BAIZE_WEB=ON for the pages;
the command line and /api/v1 work without them.</p>
</html>
)";
constexpr Asset kFiles[] = {{"/index.html", "text/html; charset=utf-8", kPage, "\"not-built\""}};
} // namespace

std::span<const Asset> table() {
  return kFiles;
}

} // namespace baize::assets
