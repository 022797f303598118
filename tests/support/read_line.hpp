// One line as it is read at the end of a formula.
#pragma once

#include <string>
#include <utility>

#include "standin/engine.hpp"
#include "support/catch.hpp"

namespace reading_a_line {

inline const standin::Engine& engine() {
    static const standin::Engine made = std::move(*standin::Engine::open({}));
    return made;
}

inline standin::Result<standin::Formula> with_line(const std::string& text) {
    return engine().read_formula("title: A\n2 kg pork shoulder\n36 g salt\n" + text, "f");
}

inline standin::Line line_of(const std::string& text) {
    INFO(text);
    auto read = with_line(text);
    if (!read) FAIL(read.error().message);
    return read->lines.back();
}

}  // namespace reading_a_line
