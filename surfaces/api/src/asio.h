#pragma once

// The one door to Boost.Asio and Beast. Boost 1.74 leaves out <utility>, and
// knows no clang with C++20 coroutines, though both work.
#include <coroutine>
#include <utility>

#if defined(__clang__) && !defined(BOOST_ASIO_HAS_CO_AWAIT)
#define BOOST_ASIO_HAS_CO_AWAIT 1
#define BOOST_ASIO_HAS_STD_COROUTINE 1
#endif

#include <boost/asio.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

namespace baize::api {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = boost::beast::http;
using Tcp = asio::ip::tcp;

} // namespace baize::api
