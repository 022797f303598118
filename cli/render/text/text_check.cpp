#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"

namespace standin::cli {
namespace {

std::string one(const char* what, const std::string& where, const std::string& message, const std::vector<std::string>& hints,
                const Look& look) {
    std::string out = wrap(std::string(what) + ": " + (where.empty() ? "" : where + ": ") + message, look.width - 2, 2, 2) + "\n";
    for (const auto& hint : hints) out += wrap(hint, look.width - 4, 4, 2) + "\n";
    return out;
}

std::string count(std::size_t n, const char* what) { return std::to_string(n) + " " + what + (n == 1 ? "" : "s"); }

// One line a kind with its first few cases, or all of them with their places.
std::string warnings_part(const std::vector<CheckWarning>& all, bool full, const Look& look) {
    constexpr std::ptrdiff_t few = 3;
    std::string out;
    for (auto first = all.begin(); first != all.end();) {
        if (first->kind.empty()) {
            out += one("warning", first->where, first->message, first->hints, look);
            ++first;
            continue;
        }
        auto last = first;
        while (last != all.end() && last->kind == first->kind) ++last;
        std::string line = "worth a look: " + first->says + " (" + std::to_string(last - first) + ")";
        const auto shown = full || last - first <= few ? last : first + few;
        for (auto w = first; !full && w != shown; ++w) line += (w == first ? ": " : "; ") + w->about;
        if (!full && shown != last) line += "; and " + std::to_string(last - shown) + " more";
        out += wrap(line, look.width - 2, 2, 2) + "\n";
        for (auto w = first; full && w != last; ++w) out += wrap(w->where + ": " + w->message, look.width - 4, 4, 2) + "\n";
        first = last;
    }
    return out;
}

std::string with_share(std::size_t part, std::size_t all) {
    return std::to_string(part) + (all == 0 ? std::string() : " (" + std::to_string((100 * part + all / 2) / all) + " %)");
}

class KindsTable {
public:
    void row(const std::string& what, const auto& c) {
        const std::size_t all = c.published + c.common_practice + c.from_memory + c.judgement;
        table_.row({what, with_share(c.published, all), std::to_string(c.common_practice), std::to_string(c.from_memory),
                    with_share(c.judgement, all)});
    }
    std::string page(const Look& look) const { return table_.page(look); }

private:
    Table table_{{{"", Align::left},
                  {"published", Align::right},
                  {"common-practice", Align::right},
                  {"from-memory", Align::right},
                  {"judgement", Align::right}}};
};

std::string coverage_part(const CheckAnswer& answer, const Look& look) {
    KindsTable kinds, roles, used;
    for (const auto& group : answer.coverage) kinds.row(group.group, group);
    kinds.row("all", *answer.counts);
    constexpr std::string_view most_used = "most used: ";
    for (const auto& group : answer.by_role) {
        const bool second = group.group.starts_with(most_used);
        (second ? used : roles).row(second ? group.group.substr(most_used.size()) : group.group, group);
    }
    return heading("Where its numbers come from", look) + kinds.page(look) +
           heading("Where the numbers come from that set the doses, by role, of foods with their own", look) + roles.page(look) +
           heading("The same over the hundred foods that the most swaps name", look) + used.page(look);
}

std::string counts_part(const KnowledgeCounts& c, const Look& look) {
    Table counts({{"", Align::left}, {"", Align::right}});
    const auto row = [&](const char* what, std::size_t n) { counts.row({what, std::to_string(n)}); };
    row("ingredients", c.ingredients);
    row("names", c.names);
    row("preparations", c.preparations);
    row("swaps", c.swaps);
    row("of these derived", c.derived_swaps);
    row("rules", c.rules);
    return heading("What it holds", look) + counts.page(look);
}

}  // namespace

std::string check_text(const CheckAnswer& answer, bool full, const Look& look) {
    std::string page;
    for (const auto& f : answer.files) {
        std::string verdict = f.ok ? "sound" : count(f.errors.size(), "error");
        if (f.laid_over) verdict += ", laid over the built-in records";
        if (!f.warnings.empty()) verdict += ", " + count(f.warnings.size(), "warning");
        page += f.file + ": " + f.kind + ", " + verdict + "\n";
        for (const auto& e : f.errors) page += one("error", e.where, e.message, e.hints, look);
        page += warnings_part(f.warnings, full, look);
    }
    return answer.counts ? page + counts_part(*answer.counts, look) + coverage_part(answer, look) : page;
}

}  // namespace standin::cli
