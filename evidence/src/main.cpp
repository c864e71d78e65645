// evidence WORLDS STUDY...: prints the pages of these studies, or of all.
#include "studies.h"

#include <charconv>
#include <cstdio>
#include <cstring>
#include <functional>
#include <map>

int main(int argc, char** argv) {
  using baize::evidence::Study;
  const std::map<std::string, std::function<Study(int)>> studies{
      {"agreement", baize::evidence::agreement},
      {"censored_times", baize::evidence::censored_times},
      {"local_level", baize::evidence::local_level},
      {"methods", baize::evidence::methods},
      {"mixed_models", baize::evidence::mixed_models},
      {"observers", baize::evidence::observers_page},
      {"recovery_figures", baize::evidence::recovery_figures},
      {"season", baize::evidence::season},
      {"speed_change", baize::evidence::speed_change},
      {"trial_means", baize::evidence::trial_means},
  };
  int worlds = 0;
  if (argc > 1) {
    std::from_chars(argv[1], argv[1] + std::strlen(argv[1]), worlds);
  }
  if (worlds < 1 || argc < 3) {
    std::fputs("evidence WORLDS STUDY...; the studies:", stderr);
    for (const auto& [name, run] : studies) {
      std::fprintf(stderr, " %s", name.c_str());
    }
    std::fputc('\n', stderr);
    return 2;
  }
  for (int i = 2; i < argc; ++i) {
    const auto found = studies.find(argv[i]);
    if (found == studies.end()) {
      std::fprintf(stderr, "evidence: there is no study '%s'.\n", argv[i]);
      return 2;
    }
    std::fputs(markdown(found->second(worlds), worlds).c_str(), stdout);
  }
  return 0;
}
