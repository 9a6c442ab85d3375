// Swift 6.0 on Linux leaves out a symbol that `@Observable` calls; later releases have it, so this one is weak.
#include <cstdio>
#include <cstdlib>

namespace swift { namespace threading {
__attribute__((weak)) void fatal(const char *said, ...) {
    std::fputs(said, stderr);
    std::abort();
}
} }
