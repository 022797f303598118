// What a recipe's method says of the making: "grind through the 3/8 inch plate", "5 Minuten kneten", "blanch the greens 3 minutes".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Numbers of the process that sentences of a method tell; only what they say outright.
Process process_in_method(const std::vector<std::string>& method, const Knowledge& knowledge);

/// Degrees Celsius where a heat starts at `at`, whatever its scale; nothing where it is no heat.
std::optional<double> celsius_at(std::string_view text, std::size_t at, const Knowledge& knowledge);

/// The plate that a text tells, in millimetres.
std::optional<double> plate_in_text(std::string_view text, const Knowledge& knowledge);

/// The heat at which a sentence holds, serves or warms up what was cooked, where germs may grow in it: "keep at 45 C until the evening".
/// Whether it is too little hangs on the rules; the hottest that some ask for is the most that is looked at.
std::optional<double> held_too_cool(std::string_view sentence, const Knowledge& knowledge);

/// The warnings of the lexicon that the sentences of a text beside the lines call for, by their words or by their figures.
std::vector<Reason> told_in_sentences(const std::vector<std::string>& sentences, const Knowledge& knowledge);

/// The heat that something is cooked in, where it is below any core that ground meat needs: "poach at 55 C for 20 minutes".
std::optional<double> cooked_too_cool(const std::vector<std::string>& method, std::optional<double> core_c, const Knowledge& knowledge);

/// A sentence that has something blanched or wilted.
struct BlanchedInMethod {
    std::string sentence;
    std::optional<double> minutes;
    bool squeezed = false;

    struct Behind {
        std::string sentence;
        bool squeezes = false;
    };
    std::vector<Behind> behind;  ///< the sentences after it that do nothing of the kind
};
/// By a word of `done`.
std::vector<BlanchedInMethod> blanched_in_method(const std::vector<std::string>& method, WordList done, const Knowledge& knowledge);

/// The sentence names this food, or greens as a whole where it is one.
bool sentence_names(std::string_view sentence, const Ingredient& food, const Knowledge& knowledge);

}  // namespace standin
