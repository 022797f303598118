#include "heap.hpp"

#include <cstdint>
#include <cstdlib>

#ifdef __GLIBC__
#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>
#endif

namespace standin::cli {

void prepare_heap() {
#if defined(__GLIBC__) && defined(MADV_HUGEPAGE)
    constexpr int piece = 32 << 20, huge_page = 2 << 20, forcing = 1 << 20;  // bytes
    mallopt(M_TOP_PAD, piece);
    mallopt(M_TRIM_THRESHOLD, 2 * piece);
    mallopt(M_MMAP_THRESHOLD, piece);  // large arrays come from the same piece
    const auto address = [] { return reinterpret_cast<std::uintptr_t>(sbrk(0)); };
    const std::uintptr_t before = address();
    void* volatile grown = std::malloc(forcing);  // makes the heap grow now; volatile, or the compiler sees through it
    std::free(grown);
    const std::uintptr_t first = (before + huge_page - 1) / huge_page * huge_page;
    const std::uintptr_t last = address() / huge_page * huge_page;
    if (last > first) madvise(reinterpret_cast<void*>(first), last - first, MADV_HUGEPAGE);
#endif
}

}  // namespace standin::cli
