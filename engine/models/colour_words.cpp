#include "models/colour_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace standin {
namespace {

enum class Said : std::size_t {
    green,
    pale_green,
    olive,
    khaki,
    greyish,
    tan,
    grey_brown,
    brown,
    red_brown,
    red,
    pink,
    purple,
    grey_violet,
    orange,
    yellow,
    dark_grey
};
constexpr std::array<std::string_view, 16> words{"green",       "pale green", "olive",     "khaki",    "greyish", "tan",
                                                 "grey-brown",  "brown",      "red-brown", "red",      "pink",    "purple",
                                                 "grey-violet", "orange",     "yellow",    "dark grey"};

struct Named {
    std::string_view name;  // as the survey has it
    std::uint32_t rgb;      // what it was said of most, sRGB
    Said said;              // the word of a maker that the name comes to
};

// Names of the survey near the colours of raw, cooked and green meat and of what colours it; rude ones left out. That "drab" is olive,
// "dark taupe" grey-brown and "clay" red-brown is judgement, the rest goes by the word in the name.
constexpr Named names[] = {
    {"army green", 0x4b5d16, Said::green},
    {"asparagus", 0x77ab56, Said::green},
    {"camo", 0x7f8f4e, Said::green},
    {"camo green", 0x526525, Said::green},
    {"camouflage green", 0x4b6113, Said::green},
    {"dirty green", 0x667e2c, Said::green},
    {"dull green", 0x74a662, Said::green},
    {"fern green", 0x548d44, Said::green},
    {"flat green", 0x699d4c, Said::green},
    {"hospital green", 0x9be5aa, Said::green},
    {"military green", 0x667c3e, Said::green},
    {"moss", 0x769958, Said::green},
    {"moss green", 0x658b38, Said::green},
    {"muddy green", 0x657432, Said::green},
    {"navy green", 0x35530a, Said::green},
    {"off green", 0x6ba353, Said::green},
    {"pine", 0x2b5d34, Said::green},
    {"slate green", 0x658d6d, Said::green},
    {"spruce", 0x0a5f38, Said::green},
    {"dark sage", 0x598556, Said::pale_green},
    {"dusty green", 0x76a973, Said::pale_green},
    {"faded green", 0x7bb274, Said::pale_green},
    {"green grey", 0x77926f, Said::pale_green},
    {"greenish grey", 0x96ae8d, Said::pale_green},
    {"greeny grey", 0x7ea07a, Said::pale_green},
    {"grey green", 0x789b73, Said::pale_green},
    {"grey/green", 0x86a17d, Said::pale_green},
    {"greyish green", 0x82a67d, Said::pale_green},
    {"lichen", 0x8fb67b, Said::pale_green},
    {"light forest green", 0x4f9153, Said::pale_green},
    {"light grey green", 0xb7e1a1, Said::pale_green},
    {"light moss green", 0xa6c875, Said::pale_green},
    {"light sage", 0xbcecac, Said::pale_green},
    {"light teal", 0x90e4c1, Said::pale_green},
    {"sage", 0x87ae73, Said::pale_green},
    {"sage green", 0x88b378, Said::pale_green},
    {"brown green", 0x706c11, Said::olive},
    {"brownish green", 0x6a6e09, Said::olive},
    {"browny green", 0x6f6c0a, Said::olive},
    {"dark olive green", 0x3c4d03, Said::olive},
    {"drab", 0x828344, Said::olive},
    {"drab green", 0x749551, Said::olive},
    {"green brown", 0x544e03, Said::olive},
    {"greenish brown", 0x696112, Said::olive},
    {"greeny brown", 0x696006, Said::olive},
    {"light olive", 0xacbf69, Said::olive},
    {"light olive green", 0xa4be5c, Said::olive},
    {"mud green", 0x606602, Said::olive},
    {"olive", 0x6e750e, Said::olive},
    {"olive brown", 0x645403, Said::olive},
    {"olive drab", 0x6f7632, Said::olive},
    {"pale olive", 0xb9cc81, Said::olive},
    {"pale olive green", 0xb1d27b, Said::olive},
    {"swamp", 0x698339, Said::olive},
    {"brown grey", 0x8d8468, Said::grey_brown},
    {"brownish grey", 0x86775f, Said::grey_brown},
    {"dark khaki", 0x9b8f55, Said::khaki},
    {"dark sand", 0xa88f59, Said::khaki},
    {"dull brown", 0x876e4b, Said::brown},
    {"greenish beige", 0xc9d179, Said::khaki},
    {"greenish tan", 0xbccb7a, Said::khaki},
    {"grey brown", 0x7f7053, Said::grey_brown},
    {"greyish brown", 0x7a6a4f, Said::grey_brown},
    {"hazel", 0x8e7618, Said::khaki},
    {"khaki", 0xaaa662, Said::khaki},
    {"khaki green", 0x728639, Said::khaki},
    {"putty", 0xbeae8a, Said::khaki},
    {"stone", 0xada587, Said::khaki},
    {"tan green", 0xa9be70, Said::khaki},
    {"cement", 0xa5a391, Said::greyish},
    {"grey", 0x929591, Said::greyish},
    {"greyish", 0xa8a495, Said::greyish},
    {"light grey", 0xd8dcd6, Said::greyish},
    {"medium grey", 0x7d7f7c, Said::greyish},
    {"pinkish grey", 0xc8aca9, Said::greyish},
    {"reddish grey", 0x997570, Said::greyish},
    {"silver", 0xc5c9c7, Said::greyish},
    {"warm grey", 0x978a84, Said::greyish},
    {"beige", 0xe6daa6, Said::tan},
    {"bland", 0xafa88b, Said::tan},
    {"camel", 0xc69f59, Said::tan},
    {"dark beige", 0xac9362, Said::tan},
    {"dark tan", 0xaf884a, Said::tan},
    {"dark taupe", 0x7f684e, Said::grey_brown},
    {"desert", 0xccad60, Said::tan},
    {"dust", 0xb2996e, Said::tan},
    {"fawn", 0xcfaf7b, Said::tan},
    {"light brown", 0xad8150, Said::tan},
    {"mushroom", 0xba9e88, Said::tan},
    {"pale brown", 0xb1916e, Said::tan},
    {"pinkish tan", 0xd99b82, Said::tan},
    {"sand", 0xe2ca76, Said::tan},
    {"sand brown", 0xcba560, Said::tan},
    {"sandstone", 0xc9ae74, Said::tan},
    {"sandy", 0xf1da7a, Said::tan},
    {"sandy brown", 0xc4a661, Said::tan},
    {"tan", 0xd1b26f, Said::tan},
    {"tan brown", 0xab7e4c, Said::tan},
    {"taupe", 0xb9a281, Said::tan},
    {"toupe", 0xc7ac7d, Said::tan},
    {"very light brown", 0xd3b683, Said::tan},
    {"wheat", 0xfbdd7e, Said::tan},
    {"brown", 0x653700, Said::brown},
    {"brownish", 0x9c6d57, Said::brown},
    {"clay brown", 0xb2713d, Said::brown},
    {"cocoa", 0x875f42, Said::brown},
    {"coffee", 0xa6814c, Said::brown},
    {"dirt", 0x8a6e45, Said::brown},
    {"dirt brown", 0x836539, Said::brown},
    {"earth", 0xa2653e, Said::brown},
    {"leather", 0xac7434, Said::brown},
    {"medium brown", 0x7f5112, Said::brown},
    {"milk chocolate", 0x7f4e1e, Said::brown},
    {"mocha", 0x9d7651, Said::brown},
    {"mud", 0x735c12, Said::brown},
    {"mud brown", 0x60460f, Said::brown},
    {"muddy brown", 0x886806, Said::brown},
    {"puce", 0xa57e52, Said::brown},
    {"purple brown", 0x673a3f, Said::brown},
    {"purplish brown", 0x6b4247, Said::brown},
    {"sepia", 0x985e2b, Said::brown},
    {"dirty purple", 0x734a65, Said::grey_violet},
    {"dull purple", 0x84597e, Said::grey_violet},
    {"dusky purple", 0x895b7b, Said::grey_violet},
    {"dusty lavender", 0xac86a8, Said::grey_violet},
    {"dusty purple", 0x825f87, Said::grey_violet},
    {"faded purple", 0x916e99, Said::grey_violet},
    {"grey purple", 0x826d8c, Said::grey_violet},
    {"greyish purple", 0x887191, Said::grey_violet},
    {"heather", 0xa484ac, Said::grey_violet},
    {"light mauve", 0xc292a1, Said::grey_violet},
    {"muted purple", 0x805b87, Said::grey_violet},
    {"purple grey", 0x866f85, Said::grey_violet},
    {"purpley grey", 0x947e94, Said::grey_violet},
    {"purplish grey", 0x7a687f, Said::grey_violet},
    {"bruise", 0x7e4071, Said::purple},
    {"eggplant purple", 0x430541, Said::purple},
    {"grape", 0x6c3461, Said::purple},
    {"grape purple", 0x5d1451, Said::purple},
    {"light eggplant", 0x894585, Said::purple},
    {"light plum", 0x9d5783, Said::purple},
    {"plum", 0x580f41, Said::purple},
    {"purplish", 0x94568c, Said::purple},
    {"blush", 0xf29e8e, Said::pink},
    {"brownish pink", 0xc27e79, Said::pink},
    {"dirty pink", 0xca7b80, Said::pink},
    {"dull pink", 0xd5869d, Said::pink},
    {"dusky pink", 0xcc7a8b, Said::pink},
    {"dusky rose", 0xba6873, Said::pink},
    {"dusty pink", 0xd58a94, Said::pink},
    {"dusty rose", 0xc0737a, Said::pink},
    {"faded pink", 0xde9dac, Said::pink},
    {"grey pink", 0xc3909b, Said::pink},
    {"greyish pink", 0xc88d94, Said::pink},
    {"light rose", 0xffc5cb, Said::pink},
    {"mauve", 0xae7181, Said::pink},
    {"muted pink", 0xd1768f, Said::pink},
    {"old pink", 0xc77986, Said::pink},
    {"old rose", 0xc87f89, Said::pink},
    {"pale pink", 0xffcfdc, Said::pink},
    {"peachy pink", 0xff9a8a, Said::pink},
    {"pig pink", 0xe78ea5, Said::pink},
    {"pinkish", 0xd46a7e, Said::pink},
    {"burgundy", 0x610023, Said::red},
    {"claret", 0x680018, Said::red},
    {"dark red", 0x840000, Said::red},
    {"dark rose", 0xb5485d, Said::red},
    {"dull red", 0xbb3f3f, Said::red},
    {"dusty red", 0xb9484e, Said::red},
    {"faded red", 0xd3494e, Said::red},
    {"light burgundy", 0xa8415b, Said::red},
    {"maroon", 0x650021, Said::red},
    {"merlot", 0x730039, Said::red},
    {"rose", 0xcf6275, Said::red},
    {"wine red", 0x7b0323, Said::red},
    {"adobe", 0xbd6c48, Said::red_brown},
    {"auburn", 0x9a3001, Said::red_brown},
    {"brick", 0xa03623, Said::red_brown},
    {"brick red", 0x8f1402, Said::red_brown},
    {"brown red", 0x922b05, Said::red_brown},
    {"brownish red", 0x9e3623, Said::red_brown},
    {"chestnut", 0x742802, Said::red_brown},
    {"clay", 0xb66a50, Said::red_brown},
    {"dark mauve", 0x874c62, Said::red_brown},
    {"dried blood", 0x4b0101, Said::red_brown},
    {"light maroon", 0xa24857, Said::red_brown},
    {"mahogany", 0x4a0100, Said::red_brown},
    {"pinkish brown", 0xb17261, Said::red_brown},
    {"red brown", 0x8b2e16, Said::red_brown},
    {"reddish brown", 0x7f2b0a, Said::red_brown},
    {"reddy brown", 0x6e1005, Said::red_brown},
    {"russet", 0xa13905, Said::red_brown},
    {"rust", 0xa83c09, Said::red_brown},
    {"rust brown", 0x8b3103, Said::red_brown},
    {"rusty red", 0xaf2f0d, Said::red_brown},
    {"terra cotta", 0xc9643b, Said::red_brown},
    {"terracotta", 0xca6641, Said::red_brown},
    {"brownish purple", 0x76424e, Said::brown},
    {"chocolate", 0x3d1c02, Said::brown},
    {"chocolate brown", 0x411900, Said::brown},
    {"dark brown", 0x341c02, Said::brown},
    {"brownish orange", 0xcb7723, Said::orange},
    {"burnt orange", 0xc04e01, Said::orange},
    {"copper", 0xb66325, Said::orange},
    {"dirty orange", 0xc87606, Said::orange},
    {"dull orange", 0xd8863b, Said::orange},
    {"dusty orange", 0xf0833a, Said::orange},
    {"faded orange", 0xf0944d, Said::orange},
    {"dark yellow", 0xd5b60a, Said::yellow},
    {"dirty yellow", 0xcdc50a, Said::yellow},
    {"dull yellow", 0xeedc5b, Said::yellow},
    {"faded yellow", 0xfeff7f, Said::yellow},
    {"mustard", 0xceb301, Said::yellow},
    {"ochre", 0xbf9005, Said::yellow},
    {"ocre", 0xc69c04, Said::yellow},
    {"sand yellow", 0xfce166, Said::yellow},
    {"sandy yellow", 0xfdee73, Said::yellow},
    {"ugly yellow", 0xd0c101, Said::yellow},
    {"charcoal", 0x343837, Said::dark_grey},
    {"charcoal grey", 0x3c4142, Said::dark_grey},
    {"dark grey", 0x363737, Said::dark_grey},
};

Lab place_of(const Named& named) {
    const auto byte = [&](int shift) { return static_cast<int>(named.rgb >> shift & 0xff); };
    return lab_of_bytes(byte(16), byte(8), byte(0));
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

using Votes = std::array<double, words.size()>;

Votes votes_on(const Lab& lab) {
    static const auto places = [] {
        std::array<Lab, std::size(names)> all{};
        std::transform(std::begin(names), std::end(names), all.begin(), place_of);
        return all;
    }();
    Votes votes{};
    for (std::size_t i = 0; i < places.size(); ++i) {
        votes[static_cast<std::size_t>(names[i].said)] += std::exp(-squared_difference(lab, places[i]) / (2 * reach * reach));
    }
    return votes;
}

double& of(Votes& votes, Said said) { return votes[static_cast<std::size_t>(said)]; }

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
        of(votes, Said::khaki) += of(votes, Said::grey_brown);
        of(votes, Said::grey_brown) = 0;
    }
    together(of(votes, Said::green), of(votes, Said::pale_green));  // pale green is green first, and pale second
    together(of(votes, Said::olive), of(votes, Said::khaki));       // who says either agrees that it is no green
    std::vector<ColourName> said;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (votes[i] > 0) said.push_back({words[i], votes[i] / all});
    std::stable_sort(said.begin(), said.end(), [](const ColourName& one, const ColourName& other) { return one.share > other.share; });
    return said;
}

ColourName surveyed_name(const Lab& lab) {
    const auto said = surveyed_names(lab);
    return said.empty() ? ColourName{"brown", 0} : said.front();  // darker than any
}

bool called_green(std::string_view word) { return word == "green" || word == "pale green" || word == "olive"; }

}  // namespace standin
