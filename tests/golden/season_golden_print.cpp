// Writes the lines of tests/golden/season_rookwater.tsv; its README says when.
#include "golden/season_estimates.h"

#include <cstdio>

int main() {
  std::fputs(baize::golden::write(baize::golden::season_estimates()).c_str(), stdout);
  return 0;
}
