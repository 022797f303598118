// How the program's memory is taken from the system.
#pragma once

namespace standin::cli {

/// To be called first. A cold start is mostly first touches of fresh memory (measured: 60 % of the time of `predict`), so the heap is
/// taken in one piece and, where the system offers them, in huge pages. Changes no result; does nothing where there is no glibc.
void prepare_heap();

}  // namespace standin::cli
