#pragma once

#include <string_view>

namespace baize::demo {

/// Lines of demo/weather/brussels.txt for 1995 to 1997, put in by the build.
extern const std::string_view kWeatherRows;

} // namespace baize::demo
