#include "standin/colour_names.hpp"

#include "models/colour.hpp"
#include "models/colour_words.hpp"

namespace standin {

std::vector<SaidOfColour> said_of(const PredictedColour& colour) {
    std::vector<SaidOfColour> said;
    if (!colour_is_surveyed(colour.lab, Doneness::cooked) || surveyed_name(colour.lab).word != colour.word) return said;
    for (const auto& name : surveyed_names(colour.lab)) said.push_back({std::string(name.word), name.share});
    return said;
}

}  // namespace standin
