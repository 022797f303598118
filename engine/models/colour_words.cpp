#include "models/colour_words.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <stdexcept>
#include <string>

#include "knowledge/readers/colour_survey.hpp"

namespace standin {
namespace packed {
// Defined in the file that the packer writes at build time.
extern const char colour_names[];
extern const std::size_t colour_names_size;
}  // namespace packed

namespace {

struct Place {
    Lab lab;
    std::size_t word = 0;
};

struct Survey {
    std::vector<std::string> words;
    std::vector<Place> places;
};

Lab place_of(std::uint32_t rgb) {
    const auto byte = [&](int shift) { return static_cast<int>(rgb >> shift & 0xff); };
    return lab_of_bytes(byte(16), byte(8), byte(0));
}

const Survey& survey() {
    static const Survey all = [] {
        auto read = colour_survey_from({packed::colour_names, packed::colour_names_size}, std::string(colour_names_file));
        if (!read) throw std::logic_error(read.error().message);  // the packer has read it
        Survey survey{std::move(read->words), {}};
        for (const auto& name : read->names) survey.places.push_back({place_of(name.rgb), name.word});
        return survey;
    }();
    return all;
}

constexpr double reach = 4;  // difference at which a name counts exp(-1/2): about the distance between neighbouring names

/// Squared colour difference, CIE94 for graphic arts: near enough to CIEDE2000 here and many times as quick.
double squared_difference(const Lab& one, const Lab& other) {
    const double chroma = chroma_of(one), other_chroma = chroma_of(other), mean = std::sqrt(chroma * other_chroma);
    const double light = one.L - other.L, strength = chroma - other_chroma, a = one.a - other.a, b = one.b - other.b;
    const double hue = std::max(0.0, a * a + b * b - strength * strength);
    const double by_chroma = 1 + 0.045 * mean, by_hue = 1 + 0.015 * mean;
    return light * light + strength * strength / (by_chroma * by_chroma) + hue / (by_hue * by_hue);
}

using Votes = std::vector<double>;

Votes votes_on(const Lab& lab) {
    Votes votes(survey().words.size());
    for (const auto& place : survey().places) votes[place.word] += std::exp(-squared_difference(lab, place.lab) / (2 * reach * reach));
    return votes;
}

double& of(Votes& votes, std::string_view word) {
    const auto& words = survey().words;
    return votes.at(static_cast<std::size_t>(std::find(words.begin(), words.end(), word) - words.begin()));
}

/// Both are told by the word that more people say.
void together(double& one, double& other) {
    double& greater = other > one ? other : one;
    const double sum = one + other;
    one = other = 0;
    greater = sum;
}

}  // namespace

std::vector<ColourName> surveyed_names(const Lab& lab) {
    Votes votes = votes_on(lab);
    const double all = std::accumulate(votes.begin(), votes.end(), 0.0);
    if (!(all > 0)) return {};  // darker or redder than any name here
    if (lab.a < 0) {            // a grey-brown with green in it is khaki
        of(votes, "khaki") += of(votes, "grey-brown");
        of(votes, "grey-brown") = 0;
    }
    together(of(votes, "green"), of(votes, "pale green"));  // pale green is green first, and pale second
    together(of(votes, "olive"), of(votes, "khaki"));       // who says either agrees that it is no green
    std::vector<ColourName> said;
    for (std::size_t i = 0; i < votes.size(); ++i)
        if (votes[i] > 0) said.push_back({survey().words[i], votes[i] / all});
    std::stable_sort(said.begin(), said.end(), [](const ColourName& one, const ColourName& other) { return one.share > other.share; });
    return said;
}

ColourName surveyed_name(const Lab& lab) {
    const auto said = surveyed_names(lab);
    return said.empty() ? ColourName{"brown", 0} : said.front();  // darker than any
}

bool called_green(std::string_view word) { return word == "green" || word == "pale green" || word == "olive"; }

}  // namespace standin
