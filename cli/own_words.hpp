// The pages call foods as the maker's own files do.
#pragma once

#include <string>

#include "standin/engine.hpp"

namespace standin::cli {

/// Has `engine` speak as the lines of a formula; says once what each is known as here, where that is quite another word.
std::string speak_as(Engine& engine, const FormulaReading& formula);

/// The same for what only a list names.
void speak_as(Engine& engine, const Inventory& have, const Formula& formula, const std::string& list);

}  // namespace standin::cli
