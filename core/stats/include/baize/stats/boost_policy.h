#pragma once

#include <boost/math/policies/policy.hpp>

namespace baize::stats {

/// The one policy for Boost.Math: errors come back as NaN instead of being
/// thrown, and double stays double (promotion to long double is a hundred times
/// slower in WebAssembly and gains nothing at our tolerances).
using MathPolicy = boost::math::policies::policy<
    boost::math::policies::domain_error<boost::math::policies::ignore_error>,
    boost::math::policies::pole_error<boost::math::policies::ignore_error>,
    boost::math::policies::overflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::underflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::evaluation_error<boost::math::policies::ignore_error>,
    boost::math::policies::rounding_error<boost::math::policies::ignore_error>,
    boost::math::policies::indeterminate_result_error<boost::math::policies::ignore_error>,
    boost::math::policies::promote_float<false>, boost::math::policies::promote_double<false>>;

} // namespace baize::stats
