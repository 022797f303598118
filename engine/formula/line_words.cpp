#include "formula/line_words.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdlib>

#include "base/names.hpp"
#include "formula/cursor.hpp"
#include "formula/measures.hpp"

namespace standin {
namespace {

// Folded. What would change weight, fat or salt (bone-in, lean, salted, drained) is not here: such a word must be part of a known name.
constexpr std::array passed_over{std::string_view{"fresh"},
                                 std::string_view{"freshly"},
                                 std::string_view{"finely"},
                                 std::string_view{"coarsely"},
                                 std::string_view{"roughly"},
                                 std::string_view{"thinly"},
                                 std::string_view{"thickly"},
                                 std::string_view{"lightly"},
                                 std::string_view{"loosely"},
                                 std::string_view{"very"},
                                 std::string_view{"well"},
                                 std::string_view{"fine"},
                                 std::string_view{"coarse"},
                                 std::string_view{"large"},
                                 std::string_view{"medium"},
                                 std::string_view{"small"},
                                 std::string_view{"extra"},
                                 std::string_view{"jumbo"},
                                 std::string_view{"big"},
                                 std::string_view{"whole"},
                                 std::string_view{"organic"},
                                 std::string_view{"boneless"},
                                 std::string_view{"boned"},
                                 std::string_view{"skinless"},
                                 std::string_view{"raw"},
                                 std::string_view{"ripe"},
                                 std::string_view{"young"},
                                 std::string_view{"tender"},
                                 std::string_view{"cold"},
                                 std::string_view{"chilled"},
                                 std::string_view{"iced"},
                                 std::string_view{"ice cold"},
                                 std::string_view{"warm"},
                                 std::string_view{"good"},
                                 std::string_view{"good quality"},
                                 std::string_view{"best"},
                                 std::string_view{"packed"},
                                 std::string_view{"washed"},
                                 std::string_view{"rinsed"},
                                 std::string_view{"clean"},
                                 std::string_view{"cleaned"},
                                 std::string_view{"trimmed"},
                                 std::string_view{"free range"},
                                 std::string_view{"grass fed"},
                                 std::string_view{"local"},
                                 std::string_view{"homegrown"},
                                 std::string_view{"homemade"},
                                 std::string_view{"home made"},
                                 std::string_view{"freshest"},
                                 std::string_view{"thick"},
                                 std::string_view{"thin"},
                                 std::string_view{"long"},
                                 std::string_view{"level"},
                                 std::string_view{"middling"},
                                 std::string_view{"pure"},
                                 std::string_view{"from the garden"},
                                 std::string_view{"white part only"},
                                 std::string_view{"white part"},
                                 std::string_view{"white and green part"},
                                 std::string_view{"crust removed"},
                                 std::string_view{"without crust"},
                                 std::string_view{"crust off"},
                                 std::string_view{"rind removed"},
                                 std::string_view{"bearded"},
                                 std::string_view{"marbled"},
                                 std::string_view{"untrimmed"},
                                 std::string_view{"well marbled"},
                                 std::string_view{"unpeeled"},
                                 std::string_view{"for frying"},
                                 std::string_view{"for brushing"},
                                 std::string_view{"for greasing"},
                                 std::string_view{"white and green part only"},
                                 std::string_view{"white and light green part only"},
                                 std::string_view{"white and light green part"},
                                 std::string_view{"opened"},
                                 std::string_view{"rind off"},
                                 std::string_view{"without rind"},
                                 std::string_view{"rindless"},
                                 std::string_view{"sinew removed"},
                                 std::string_view{"without gristle"},
                                 std::string_view{"free from skin and gristle"},
                                 std::string_view{"not too lean"},
                                 std::string_view{"not too fat"},
                                 std::string_view{"at hand"},
                                 std::string_view{"garden"},
                                 std::string_view{"plain"},
                                 std::string_view{"optional"},
                                 std::string_view{"unsweetened"},
                                 std::string_view{"at room temperature"},
                                 std::string_view{"room temperature"},
                                 std::string_view{"of"},
                                 std::string_view{"the"},
                                 std::string_view{"and"},
                                 std::string_view{"then"},
                                 std::string_view{"each"},
                                 std::string_view{"in all"},
                                 std::string_view{"fat and lean"},
                                 std::string_view{"lean and fat"},
                                 std::string_view{"stiff"},
                                 std::string_view{"no skin or gristle"},
                                 std::string_view{"no skin"},
                                 std::string_view{"skin off"},
                                 std::string_view{"one by one"},
                                 std::string_view{"added one by one"},
                                 std::string_view{"of sinew"},
                                 std::string_view{"of silver skin"},
                                 std::string_view{"of silverskin"},
                                 std::string_view{"of gristle"},
                                 std::string_view{"of sinew and gristle"},
                                 std::string_view{"of membrane"},
                                 std::string_view{"silver skin removed"},
                                 std::string_view{"silverskin removed"},
                                 std::string_view{"gristle removed"},
                                 std::string_view{"membrane removed"},
                                 std::string_view{"of dark leaf"},
                                 std::string_view{"of tough leaf"},
                                 std::string_view{"of outer leaf"},
                                 std::string_view{"dark leaf removed"},
                                 std::string_view{"tough end removed"},
                                 std::string_view{"root removed"},
                                 std::string_view{"end trimmed"},
                                 std::string_view{"root trimmed"},
                                 std::string_view{"stem trimmed"},
                                 std::string_view{"thoroughly"},
                                 std::string_view{"stored in the freezer"},
                                 std::string_view{"stored in freezer"},
                                 std::string_view{"placed in the freezer"},
                                 std::string_view{"put in the freezer"},
                                 std::string_view{"kept in the freezer"},
                                 std::string_view{"kept in the fridge"},
                                 std::string_view{"kept cold"},
                                 std::string_view{"including fat"},
                                 std::string_view{"with fat"},
                                 std::string_view{"with the fat"},
                                 std::string_view{"with fat included"},
                                 std::string_view{"fat included"},
                                 std::string_view{"with a good fat cap"},
                                 std::string_view{"with fat cap"},
                                 std::string_view{"fat cap on"},
                                 std::string_view{"fat left on"},
                                 std::string_view{"fat on"},
                                 std::string_view{"with some fat"},
                                 std::string_view{"tender part only"},
                                 std::string_view{"tender inner part only"},
                                 std::string_view{"bottom part only"},
                                 std::string_view{"lower part only"},
                                 std::string_view{"in cold water"},
                                 std::string_view{"in cool water"},
                                 std::string_view{"in warm water"},
                                 std::string_view{"in lukewarm water"},
                                 std::string_view{"in several changes of water"},
                                 std::string_view{"under cold water"},
                                 std::string_view{"under cold running water"},
                                 std::string_view{"under running water"},
                                 std::string_view{"coarse grind"},
                                 std::string_view{"medium grind"},
                                 std::string_view{"fine grind"},
                                 std::string_view{"of large piece of fat"},
                                 std::string_view{"deboned"},
                                 std::string_view{"high temp"},
                                 std::string_view{"high temperature"},
                                 std::string_view{"shelf stable"},
                                 std::string_view{"store bought"},
                                 std::string_view{"cooled"},
                                 std::string_view{"bone removed"},
                                 std::string_view{"higher welfare"},
                                 std::string_view{"at fridge temperature"},
                                 std::string_view{"carefully"},
                                 std::string_view{"gently"},
                                 std::string_view{"slightly"},
                                 std::string_view{"scant"},
                                 std::string_view{"freezing cold"},
                                 std::string_view{"super cold"},
                                 std::string_view{"extra cold"},
                                 std::string_view{"extremely cold"},
                                 std::string_view{"straight from the fridge"},
                                 std::string_view{"from the fridge"},
                                 std::string_view{"refrigerated"},
                                 std::string_view{"well rinsed"},
                                 std::string_view{"rinsed well"},
                                 std::string_view{"washed well"},
                                 std::string_view{"picked through"},
                                 std::string_view{"heaped"},
                                 std::string_view{"aromatic"},
                                 std::string_view{"pastured"},
                                 std::string_view{"pasture raised"},
                                 std::string_view{"heritage"},
                                 std::string_view{"rare breed"},
                                 std::string_view{"outdoor reared"},
                                 std::string_view{"corn fed"},
                                 std::string_view{"hormone free"},
                                 std::string_view{"antibiotic free"},
                                 std::string_view{"hungarian"},
                                 std::string_view{"greek"},
                                 std::string_view{"turkish"},
                                 std::string_view{"sicilian"},
                                 std::string_view{"tuscan"},
                                 std::string_view{"french"},
                                 std::string_view{"german"},
                                 std::string_view{"english"},
                                 std::string_view{"navel"},
                                 std::string_view{"unwaxed"},
                                 std::string_view{"scrubbed"},
                                 std::string_view{"firm"},
                                 std::string_view{"crisp"},
                                 std::string_view{"juicy"},
                                 std::string_view{"fragrant"},
                                 std::string_view{"whole or crushed"},
                                 std::string_view{"whole or ground"},
                                 std::string_view{"ground or whole"},
                                 std::string_view{"thick cut"},
                                 std::string_view{"thick sliced"},
                                 std::string_view{"thin cut"},
                                 std::string_view{"de boned"},
                                 std::string_view{"boned out"},
                                 std::string_view{"boned and rinded"},
                                 std::string_view{"rinded"},
                                 std::string_view{"skinned and boned"},
                                 std::string_view{"skin and bone removed"},
                                 std::string_view{"day old"},
                                 std::string_view{"unseasoned"},
                                 std::string_view{"unflavoured"},
                                 std::string_view{"unflavored"},
                                 std::string_view{"spoonful"},
                                 std::string_view{"spoon"}};

constexpr std::array cuts{std::string_view{"chopped"},
                          std::string_view{"minced"},
                          std::string_view{"ground"},
                          std::string_view{"sliced"},
                          std::string_view{"diced"},
                          std::string_view{"crushed"},
                          std::string_view{"grated"},
                          std::string_view{"shredded"},
                          std::string_view{"powdered"},
                          std::string_view{"cracked"},
                          std::string_view{"torn"},
                          std::string_view{"cubed"},
                          std::string_view{"bruised"},
                          std::string_view{"pounded"},
                          std::string_view{"rubbed"},
                          std::string_view{"beaten"},
                          std::string_view{"whipped"},
                          std::string_view{"whisked"},
                          std::string_view{"melted"},
                          std::string_view{"mashed"},
                          std::string_view{"pureed"},
                          std::string_view{"scraped"},
                          std::string_view{"cut"},
                          std::string_view{"halved"},
                          std::string_view{"quartered"},
                          std::string_view{"crumbled"},
                          std::string_view{"slivered"},
                          std::string_view{"snipped"},
                          std::string_view{"julienned"},
                          std::string_view{"milled"},
                          std::string_view{"sifted"},
                          std::string_view{"cut in square"},
                          std::string_view{"cut into cube"},
                          std::string_view{"cut in cube"},
                          std::string_view{"cut up"},
                          std::string_view{"ground up"},
                          std::string_view{"with side of knife"},
                          std::string_view{"with the side of a knife"},
                          std::string_view{"with a rolling pin"},
                          std::string_view{"rolled"},
                          std::string_view{"hand cut"},
                          std::string_view{"put through the mincer"},
                          std::string_view{"bashed"},
                          std::string_view{"smashed"},
                          std::string_view{"pressed through a sieve"},
                          std::string_view{"to a paste"},
                          std::string_view{"into cube"},
                          std::string_view{"in cube"},
                          std::string_view{"into a paste"},
                          std::string_view{"to a pulp"},
                          std::string_view{"to a powder"},
                          std::string_view{"into a powder"},
                          std::string_view{"put through a garlic press"},
                          std::string_view{"in a garlic press"},
                          std::string_view{"in a mortar"},
                          std::string_view{"on a microplane"},
                          std::string_view{"on a box grater"},
                          std::string_view{"hand chopped"},
                          std::string_view{"knife cut"},
                          std::string_view{"butterflied"},
                          std::string_view{"cut into chunk"},
                          std::string_view{"pulled apart"},
                          std::string_view{"processed"},
                          std::string_view{"blitzed"},
                          std::string_view{"crumbed"},
                          std::string_view{"flaked"},
                          std::string_view{"bite size"},
                          std::string_view{"bite sized"}};

constexpr std::array vague{
    std::string_view{"to taste"},      std::string_view{"to season"},  std::string_view{"to bind"},       std::string_view{"as needed"},
    std::string_view{"as required"},   std::string_view{"a little"},   std::string_view{"a few"},         std::string_view{"a bit"},
    std::string_view{"some"},          std::string_view{"several"},    std::string_view{"unstated"},      std::string_view{"q s"},
    std::string_view{"enough"},        std::string_view{"sufficient"}, std::string_view{"to cover"},      std::string_view{"for dusting"},
    std::string_view{"for frying"},    std::string_view{"if needed"},  std::string_view{"a touch"},       std::string_view{"at will"},
    std::string_view{"to serve"},      std::string_view{"part"},       std::string_view{"optional"},      std::string_view{"few"},
    std::string_view{"good grind"},    std::string_view{"grind of"},   std::string_view{"turn of"},       std::string_view{"grating of"},
    std::string_view{"to preference"}, std::string_view{"as desired"}, std::string_view{"to your taste"}, std::string_view{"plenty of"}};

bool in_word(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '%' || c == '/' || c == '.' || c == '\'' ||
           byte >= 0x80;
}

// "shredded/chopped" are two words, "80/20" and "1/2" are one.
bool parts_words(std::string_view line, std::size_t i) {
    const auto letter = [&](std::size_t at) { return at < line.size() && std::isalpha(static_cast<unsigned char>(line[at])) != 0; };
    return line[i] == '/' && i > 0 && letter(i - 1) && letter(i + 1);
}

// Words cut short that stand inside names: "grnd white pepper".
std::string_view in_full(std::string_view folded) {
    if (folded == "grnd" || folded == "grd") return "ground";
    if (folded == "chpd" || folded == "choped") return "chopped";
    if (folded == "frsh") return "fresh";
    return {};
}

std::size_t word_end(std::string_view line, std::size_t i) {
    for (; i < line.size() && in_word(line[i]) && !parts_words(line, i); ++i) {
        Cursor sign(line, i);
        sign.space();
        if (sign.at() > i || sign.eat_dash() || sign.eat("\u2014")) break;
    }
    return i;
}

template <std::size_t N>
std::size_t longest(const std::vector<Word>& words, std::size_t first, const std::array<std::string_view, N>& list) {
    std::string joined;
    std::size_t best = 0;
    for (std::size_t count = 1; count <= 6 && first + count <= words.size(); ++count) {
        if (words[first + count - 1].segment != words[first].segment) break;
        if (count > 1) joined += ' ';
        joined += words[first + count - 1].folded;
        if (std::find(list.begin(), list.end(), joined) != list.end()) best = count;
    }
    return best;
}

}  // namespace

std::vector<Word> words_of(std::string_view line) {
    std::vector<Word> words;
    std::size_t segment = 0;
    bool after_blank = true;
    for (std::size_t i = 0; i < line.size();) {
        Cursor here(line, i);
        here.space();
        const bool blank = here.at() > i;
        if (!blank && (here.eat_dash() || here.eat("\u2014"))) {
            // A dash parts the line only between blanks or doubled; in "flat-leaf" it joins.
            bool doubled = line.compare(i, 3, "\u2014") == 0;  // the long dash parts with or without blanks
            while (here.eat_dash() || here.eat("\u2014")) doubled = true;
            if (doubled || (after_blank && (here.done() || here.rest().front() == ' '))) ++segment;
        } else if (!blank) {
            const std::size_t end = word_end(line, i);
            if (line[i] == ',' || line[i] == ';' || line[i] == ':') ++segment;
            here.go(end > i ? end : i + 1);
            Word word{std::string(line.substr(i, end - i)), {}, i, end, segment};
            while (!word.raw.empty() && word.raw.back() == '.') word.raw.pop_back(), --word.end;
            if (const auto full = in_full(fold(word.raw)); !full.empty()) word.raw = full;
            word.folded = fold(word.raw);
            if (const auto size = size_word(word.folded); !size.empty() && word.folded.size() < 4) word.folded = size;
            if (!word.folded.empty()) words.push_back(std::move(word));
        }
        after_blank = blank;
        i = here.at();
    }
    return words;
}

std::string phrase(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    std::string out;
    for (std::size_t i = first; i < last; ++i) {
        if (i > first) out += ' ';
        out += words[i].raw;
    }
    return out;
}

std::size_t passable(const std::vector<Word>& words, std::size_t first) { return longest(words, first, passed_over); }

std::size_t cut_word(const std::vector<Word>& words, std::size_t first) { return longest(words, first, cuts); }

bool opens_aside(const std::vector<Word>& words, std::size_t i) {
    const auto& word = words[i].folded;
    for (const std::string_view opener : {"from", "for", "if", "depending", "until", "preferably", "ideally", "adjust", "try", "ask", "buy",
                                          "choose", "use", "look", "like", "i", "see", "prior", "so"})
        if (word == opener) return true;
    const auto next = [&](std::string_view wanted) { return i + 1 < words.size() && words[i + 1].folded == wanted; };
    return (word == "such" && next("as")) ||
           (word == "or" && (next("about") || next("roughly") || next("approximately") || next("to") || next("more") || next("less") ||
                             next("so") || next("as"))) ||
           (word == "to" && (next("taste") || next("your") || next("keep") || next("help") || next("give") || next("bind") || next("add")));
}

bool changes_food(std::string_view folded) {
    for (const std::string_view word :
         {"free",     "vegan",     "vegetarian", "low",     "light", "lite",    "non",    "imitation", "alcohol",      "salted",
          "unsalted", "smoked",    "cured",      "dried",   "dry",   "pickled", "brined", "canned",    "tinned",       "jarred",
          "bottled",  "drained",   "bone",       "skin",    "rind",  "cooked",  "lean",   "fat",       "fatty",        "syrup",
          "oil",      "brine",     "water",      "vinegar", "milk",  "paste",   "powder", "powdered",  "concentrated", "reduced",
          "diluted",  "sweetened", "nitrite",    "nitrate", "cure",  "curing",  "weight", "weighed",   "net",          "yield",
          "half",     "instead",   "without",    "less",    "zest",  "juice",   "juiced", "zested",    "peel",         "yolk",
          "white",    "flesh",     "only",       "grating", "jar",   "can",     "tin",    "bottle",    "frozen",       "equal"})
        if (folded == word) return true;
    return false;
}

bool tells_of_absence(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    for (std::size_t i = first + 1; i < last; ++i)
        if (words[i].folded == "free" && words[first].folded != "not" && (i + 1 >= last || words[i + 1].folded != "range")) return true;
    return false;
}

bool names_a_kind(std::string_view folded) {
    for (const std::string_view word :
         {"smoked", "salted", "unsalted", "cured", "dried", "pickled", "brined", "canned", "tinned", "frozen", "vegan", "imitation"})
        if (folded == word) return true;
    return false;
}

std::string outside_purpose(std::string_view line) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i].folded != "for") continue;
        for (std::size_t at = i + 1; at < std::min(words.size(), i + 5) && words[at].segment == words[i].segment; ++at)
            for (const std::string_view outside :
                 {"frying",    "cooking", "pan",         "grill",     "grilling", "brushing", "greasing", "serving",
                  "garnish",   "rinsing", "rehydrating", "blanching", "soaking",  "poaching", "boiling",  "braising",
                  "simmering", "dusting", "dipping",     "basting",   "skillet",  "searing",  "broth",    "topping"})
                if (words[at].folded == outside) return "\"" + phrase(words, i, at + 1) + "\"";
    }
    return {};
}

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    if (first >= words.size()) return std::nullopt;
    const std::string& word = words[first].folded;
    char* end = nullptr;
    const double number = std::strtod(word.c_str(), &end);
    if (end == word.c_str() || number <= 0 || number >= 100) return std::nullopt;
    if (*end == '/') {
        char* behind = nullptr;
        const double fat = std::strtod(end + 1, &behind);
        if (*behind == '\0' && number + fat == 100) return LeanShare{number, first, first + 1};
        return std::nullopt;
    }
    std::size_t at = first + 1;
    if (*end == '\0' && at < words.size() && words[at].folded == "%") ++at;
    else if (std::string_view(end) != "%") return std::nullopt;
    if (at >= words.size()) return std::nullopt;
    if (words[at].folded == "lean") return LeanShare{number, first, at + 1};
    if (words[at].folded == "fat") return LeanShare{100 - number, first, at + 1};
    return std::nullopt;
}

std::string_view vague_amount(std::string_view line) {
    const std::string padded = " " + fold(line) + " ";
    for (const auto phrase : vague)
        if (padded.find(" " + std::string(phrase) + " ") != std::string::npos) return phrase;
    return {};
}

}  // namespace standin
