// Is it in the list?
#pragma once

#include <algorithm>
#include <iterator>

namespace standin {

template <class List, class One>
bool contains(const List& list, const One& one) {
    return std::find(std::begin(list), std::end(list), one) != std::end(list);
}

}  // namespace standin
