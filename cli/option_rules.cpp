#include <array>
#include <charconv>
#include <limits>

#include "options.hpp"

namespace standin::cli {
namespace {

using Complaint = std::optional<std::string>;

template <class Number>
Complaint whole(Number& into, const std::string& text, Number least, Number most) {
    Number value{};
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (trouble != std::errc{} || end != text.data() + text.size() || value < least || value > most)
        return "expected a whole number from " + std::to_string(least) + " to " + std::to_string(most);
    into = value;
    return std::nullopt;
}

Complaint filled(std::string& into, const std::string& text) {
    if (text.empty()) return "expected something after it";
    into = text;
    return std::nullopt;
}

Complaint more(std::vector<std::string>& into, const std::string& text) { return filled(into.emplace_back(), text); }

Complaint colour(Call& call, const std::string& text) {
    if (text == "auto") call.colour = ColourChoice::when_fit;
    else if (text == "always") call.colour = ColourChoice::always;
    else if (text == "never") call.colour = ColourChoice::never;
    else return "expected auto, always or never";
    return std::nullopt;
}

Complaint to(Call& call, const std::string& text) {
    if (text != "json" && text != "text" && text != "jsonld") return "expected text, json or jsonld";
    call.to = text;
    return std::nullopt;
}

Complaint role(Call& call, const std::string& text) {
    call.role = role_of(text);
    if (call.role) return std::nullopt;
    std::string known;
    for (std::size_t r = 0; r < role_count; ++r)
        known += (r == 0 ? "" : r + 1 == role_count ? " or " : ", ") + std::string(word(static_cast<Role>(r)));
    return "expected " + known;
}

Complaint units(Call& call, const std::string& text) {
    if (text == "metric") call.units = Units::metric;
    else if (text == "us") call.units = Units::us;
    else if (text == "both") call.units = Units::both;
    else return "expected metric, us or both";
    return std::nullopt;
}

template <bool Call::*field>
Complaint on(Call& call, const std::string&) {
    call.*field = true;
    return std::nullopt;
}

Complaint use(Call& call, const std::string& text) {
    constexpr std::string_view between = " for ";
    const auto at = text.find(between);
    if (at == std::string::npos || at == 0 || at + between.size() >= text.size())
        return "expected one food for another, such as sorrel for tomatillo";
    call.use.push_back({text.substr(0, at), text.substr(at + between.size())});
    return std::nullopt;
}

Complaint why(Call& call, const std::string& text) {
    call.why = property_of(text);
    call.why_colour = call.why ? std::nullopt : colour_part_of(text);
    if (call.why || call.why_colour) return std::nullopt;
    std::string known;
    const auto add = [&](std::string_view word) {
        if (!word.empty()) known += (known.empty() ? "" : ", ") + std::string(word);
    };
    for_each_property([&](Property p) { add(info(p).word); });
    for (std::size_t p = 0; p < colour_part_count; ++p) add(info(static_cast<ColourPart>(p)).word);
    return "expected a property: " + known + ", or a key of the JSON answer";
}

constexpr std::array<OptionRule, 44> rules{{
    {"--tasted", "WORDS", "what was said of the fried test patty: 'flat, much too sour'", "mend",
     [](Call& c, const std::string& v) { return more(c.tasted, v); }},
    {"--measured", "M", "what was measured of the mass: 'pH 4.9', 'salt 2.4 %'; may be repeated", "mend",
     [](Call& c, const std::string& v) { return more(c.measured, v); }},
    {"--made", "W", "how much mass there is: 9.6kg, 20 lb; else as the formula says", "mend",
     [](Call& c, const std::string& v) { return filled(c.made, v); }},
    {"--make", "M", "so much of one sausage: 'Hedgerow green: 3 kg', by title, file or number; may be repeated", "plan",
     [](Call& c, const std::string& v) { return more(c.make, v); }},
    {"--have", "FILE", "what is on hand, text or JSON: 'spinach 400 g', 'chard plenty', 'no cilantro'", "swaps adapt mend plan sheet",
     [](Call& c, const std::string& v) { return filled(c.have.emplace(), v); }},
    {"--want", "W", "a want word or a condition such as 'ph>=5.6'; may be repeated", "adapt",
     [](Call& c, const std::string& v) { return more(c.wants, v); }},
    {"--without", "X", "a food, a kind of food or a diet to go by: nuts, dairy, pork, halal; may be repeated", "swaps adapt mend plan",
     [](Call& c, const std::string& v) { return more(c.without, v); }},
    {"--keep", "LINE", "a line never to touch; may be repeated", "adapt", [](Call& c, const std::string& v) { return more(c.keep, v); }},
    {"--use", "IDEA", "your own idea, such as 'sorrel for tomatillo': nothing else stands in for that line; may be repeated", "adapt", use},
    {"--most", "FOOD", "no more than this of a food: 'spinach 500 g'; may be repeated", "adapt",
     [](Call& c, const std::string& v) { return more(c.most, v); }},
    {"--least", "LINE", "no less than this of a line: 'parsley 100 g'; may be repeated", "adapt",
     [](Call& c, const std::string& v) { return more(c.least, v); }},
    {"--changes", "N", "most changes in one variant", "adapt",
     [](Call& c, const std::string& v) { return whole<std::size_t>(c.changes, v, 1, 1000); }},
    {"--sure", "PCT", "how sure a want must be met: in so many of 100 likely batches, 50 when not said", "adapt mend",
     [](Call& c, const std::string& v) { return whole<std::size_t>(c.sure, v, 50, 99); }},
    {"--top", "N", "how many to show", "swaps adapt mend",
     [](Call& c, const std::string& v) { return whole<std::size_t>(c.top.emplace(), v, 1, 100); }},
    {"--meat", "W", "scale the batch to this much meat: 5kg, 11 lb, 2400 g", "sheet adapt",
     [](Call& c, const std::string& v) { return filled(c.meat, v); }},
    {"--as-much", "", "as large a batch as the weights of --have make", "adapt", on<&Call::as_much>},
    {"--total", "W", "scale the batch to this much on the scale in all", "sheet",
     [](Call& c, const std::string& v) { return filled(c.total, v); }},
    {"--only", "LINE", "no more than this of a line, such as 'pork shoulder 3 kg': the batch gets no larger; may be repeated", "sheet",
     [](Call& c, const std::string& v) { return more(c.only, v); }},
    {"--piece", "W", "raw weight of one link or patty", "sheet", [](Call& c, const std::string& v) { return filled(c.piece, v); }},
    {"--casing", "D", "stuff it into a casing this wide: 32mm, 1 1/4 in", "sheet",
     [](Call& c, const std::string& v) { return filled(c.casing, v); }},
    {"--link", "L", "length of one link: 12cm, 5 in", "sheet", [](Call& c, const std::string& v) { return filled(c.link, v); }},
    {"--prices", "FILE", "what foods cost, a line each: 'pork shoulder 6.50/kg'; else prices.txt beside the formula",
     "predict swaps adapt compare sheet", [](Call& c, const std::string& v) { return filled(c.prices.emplace(), v); }},
    {"--units", "U", "metric, us or both; else as the formula is written", "predict swaps adapt compare sheet lookup mend plan", units},
    {"--full", "", "every part of the answer, with the numbers behind it", "predict swaps adapt compare mend plan", on<&Call::full>},
    {"--save", "FILE", "write the variant, or the formula with the stand-in taken, as a formula of its own; .json: as JSON",
     "adapt swaps convert mend", [](Call& c, const std::string& v) { return filled(c.save, v); }},
    {"--sheet", "", "the bench sheet of a variant in place of the answer", "adapt", on<&Call::sheet>},
    {"--variant", "N", "which variant --save and --sheet mean, or `-` where it is an answer of adapt (1)", "adapt sheet predict mend",
     [](Call& c, const std::string& v) { return whole<std::size_t>(c.variant.emplace(), v, 1, 100); }},
    {"--take", "N", "which stand-in --save means (1)", "swaps",
     [](Call& c, const std::string& v) { return whole<std::size_t>(c.take.emplace(), v, 1, 100); }},
    {"--html", "FILE", "also write the page as one self-contained HTML file", "predict swaps adapt compare sheet mend plan",
     [](Call& c, const std::string& v) { return filled(c.html, v); }},
    {"--to", "FORM", "text, json or jsonld (a schema.org recipe)", "convert", to},
    {"--ask", "", "ask about each doubt in turn, with numbered answers, and write the formula that comes of it", "convert", on<&Call::ask>},
    {"--role", "R", "only the swaps of one role: green, heat, acid, binder, lean, fat, ...", "graph", role},
    {"--why", "P", "what moves one property and what makes its band wide: ph, heat, bind, green, loss, ...", "predict", why},
    {"--month", "M", "the month, 1 to 12: what is out of season is told, and not brought in unless it is on hand", "swaps adapt",
     [](Call& c, const std::string& v) { return whole<int>(c.month.emplace(), v, 1, 12); }},
    {"--season-shift", "N", "months that seasons lie later than in the temperate north; 6 in the south", "swaps adapt lookup",
     [](Call& c, const std::string& v) { return whole<int>(c.season_shift, v, 0, 11); }},
    {"--json", "", "one JSON document with stable keys instead of a page", "", on<&Call::json>},
    {"--knowledge", "DIR", "records that add to or replace the built-in ones", "",
     [](Call& c, const std::string& v) { return filled(c.knowledge, v); }},
    {"--kitchen", "FILE",
     "facts of your lots, scale and pan, a line each; kitchen.txt beside the formula is taken by itself; none: no such", "",
     [](Call& c, const std::string& v) { return filled(c.kitchen.emplace(), v); }},
    {"--rules", "CODE", "rule set for caps and temperatures: us, eu, uk or codex", "",
     [](Call& c, const std::string& v) { return filled(c.rules, v); }},
    {"--seed", "N", "seed of the draws behind the bands (1)", "",
     [](Call& c, const std::string& v) { return whole<std::uint64_t>(c.seed, v, 0, std::numeric_limits<std::uint64_t>::max()); }},
    {"--draws", "N", "how many draws (512)", "", [](Call& c, const std::string& v) { return whole<std::size_t>(c.draws, v, 16, 100000); }},
    {"--color", "WHEN", "auto, always or never", "", colour},
    {"-q,--quiet", "", "no log and no progress; cautions stay", "", on<&Call::quiet>},
    {"-v,--verbose", "", "log what is done, on standard error", "", on<&Call::verbose>},
}};

}  // namespace

std::span<const OptionRule> option_rules() { return rules; }

bool fits(const OptionRule& rule, std::string_view command) {
    if (rule.commands.empty()) return true;
    for (auto left = rule.commands; !left.empty();) {
        const auto space = left.find(' ');
        if (left.substr(0, space) == command) return true;
        left.remove_prefix(space == std::string_view::npos ? left.size() : space + 1);
    }
    return false;
}

}  // namespace standin::cli
