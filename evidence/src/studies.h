#pragma once

#include "study.h"

namespace baize::evidence {

/// Each draws `worlds` worlds a row, each from a stream of its own.
Study agreement(int worlds);
Study observers_page(int worlds);
Study speed_change(int worlds);
Study recovery_figures(int worlds);
Study censored_times(int worlds);
Study local_level(int worlds);
Study season(int worlds);
Study trial_means(int worlds);
Study methods(int worlds);
Study mixed_models(int worlds);

} // namespace baize::evidence
