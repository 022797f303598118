#include <algorithm>
#include <array>

#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "standin/narrate.hpp"
#include "standin/number_text.hpp"

namespace standin::cli {
namespace {

// Numbers of a record keep their own precision: four significant digits, no idle zeros.
std::string plain(double value) { return figures_text(value, 4); }

std::string plain(const Band& b) {
    const auto low = plain(b.low), mid = plain(b.mid), high = plain(b.high);
    return low == mid && mid == high ? mid : mid + " (" + low + "-" + high + ")";
}

std::string facts_part(const char* head, const std::vector<Fact>& facts, const Look& look) {
    if (facts.empty()) return "";
    Table table({{"", Align::left}, {"", Align::left}, {"", Align::left}, {"source", Align::left}, {"kind", Align::left}});
    for (const auto& f : facts) table.row({f.what, plain(f.value), f.unit, f.source, f.kind});
    return heading(head, look) + table.page(look);
}

std::string swaps_part(const char* head, const std::vector<SwapFact>& swaps, bool out, const Engine& engine, const Look& look) {
    if (swaps.empty()) return "";
    Table table({{"", Align::left}, {"as", Align::left}, {"by", Align::left}, {"close", Align::right}, {"source", Align::left}});
    for (const auto& s : swaps) {
        const std::string name = engine.name_of(out ? s.to : s.from);
        table.row({out ? with_preparations(name, s.prepared) : name, std::string(word(s.role)), s.basis, number(s.closeness, 2), s.source});
    }
    std::string text = heading(head, look) + table.page(look);
    for (std::size_t i = 0; i < swaps.size(); ++i) {
        const auto& note = swaps[i].note;
        const auto same = [&](const SwapFact& s) { return s.note == note; };
        const auto first = std::find_if(swaps.begin(), swaps.end(), same);
        if (note.empty() || first != swaps.begin() + static_cast<std::ptrdiff_t>(i)) continue;  // said once
        const bool alone = std::count_if(swaps.begin(), swaps.end(), same) == 1;
        text += bullet((alone ? engine.name_of(out ? swaps[i].to : swaps[i].from) + ": " : "") + note, look);
    }
    return text;
}

// Where the record's own months are shown they are those of the temperate north; `--season-shift` moves them.
std::string months(const std::vector<int>& season) {
    constexpr std::array<const char*, 12> names{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    std::string out;
    for (const int m : season)
        if (m >= 1 && m <= 12) out += (out.empty() ? "" : " ") + std::string(names[static_cast<std::size_t>(m - 1)]);
    return out;
}

std::string ingredient_facts(const IngredientFacts& i, const Look& look) {
    std::vector<std::string> roles, names(i.names.begin() + (i.names.empty() ? 0 : 1), i.names.end()), aroma;
    for (const auto role : i.roles) roles.emplace_back(word(role));
    for (const auto& [note, strength] : i.aroma) aroma.push_back(note + " " + plain(strength));
    std::string out = look.bold(i.names.empty() ? i.id : i.names.front()) + "\n";
    const auto say = [&](const char* what, const std::string& text) {
        if (!text.empty()) out += wrap(what + text, look.width - 2, 2, 2) + "\n";
    };
    say("there for: ", listed(roles));
    say("family: ", i.family + (i.latin.empty() ? "" : ", " + i.latin));
    say("also called: ", listed(names));
    const bool in_doubt = !i.may_hold.empty();
    say("allergens: ", !i.allergens.empty() ? listed(i.allergens) : in_doubt ? "the packet decides" : "none of the listed ones");
    say("check the packet: ", in_doubt ? "often holds " + listed(i.may_hold) : "");
    say("season: ", months(i.season));
    say("keeping: ", i.storage);
    say("aroma, 0-5: ", listed(aroma));
    say("", i.note);
    say("composition taken from: ", i.stand_in);
    return out;
}

std::string ingredient_part(const IngredientFacts& i, const Engine& engine, const Look& look) {
    std::string out = ingredient_facts(i, look) + cautions_part(i.cautions, look) + facts_part("In 100 g", i.composition, look) +
                      facts_part("What it brings", i.doses, look) + facts_part("Measures", i.measures, look) +
                      swaps_part("What can stand in for it", i.swaps_out, true, engine, look) +
                      swaps_part("What it can stand in for", i.swaps_in, false, engine, look);
    if (!i.sources.empty()) out += heading("Sources", look);
    for (const auto& [id, cite] : i.sources) out += bullet(id + ": " + cite, look);
    return out;
}

}  // namespace

std::string lookup_text(const LookupAnswer& found, const Engine& engine, Units units, const Look& look) {
    const LookupAnswer answer = told_in(found, units);
    std::string page;
    if (!answer.read_as.empty()) page = wrap(answer.read_as, look.width, 0, 0);
    for (const auto& match : answer.matches) page += (page.empty() ? "" : "\n\n") + ingredient_part(match, engine, look);
    return page;
}

}  // namespace standin::cli
