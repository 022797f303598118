// Law and guidance. A condition is a word before a colon and what it is about: "ingredient:oxalate", "property:ph<5.5". It is understood
// here or it is an error with the nearest word; nothing below sees the text.
#include <algorithm>
#include <array>

#include "core/written_quantity.hpp"
#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/reading.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// Names of properties in conditions that are not those of questions at the command line.
constexpr std::string_view salt_of_meat = "salt_of_meat";

class ConditionReader {
public:
    ConditionReader(const JsonNode& node, Problems& problems) : node_(node), problems_(problems) {}

    std::optional<When> read() {
        const std::string_view text = node_.text;
        for (const auto& [words, when] : whole())
            if (text == words) return when;
        const auto colon = text.find(':');
        const auto kind = text.substr(0, colon), rest = colon == std::string_view::npos ? std::string_view{} : text.substr(colon + 1);
        if (rest.empty() && colon != std::string_view::npos) return unknown("\"" + std::string(text) + "\" does not say what", {});
        if (kind == "ingredient") return IngredientBears{std::string(rest)};
        if (kind == "allergen") return AllergenInside{std::string(rest)};
        if (kind == "species") return SpeciesInside{std::string(rest)};
        if (kind == "no-species") return SpeciesAbsent{std::string(rest)};
        if (kind == "role") return role(rest);
        if (kind == "leaf") return raw_leaf(rest);
        if (kind == "property") return property(rest);
        if (kind == "process") return process(rest);
        return unknown("unknown condition \"" + std::string(text) + "\"", nearest_words(kind, kinds()));
    }

private:
    static std::array<std::pair<std::string_view, When>, 6> whole() {
        return {{{"process:core<rule", CoreBelowRule{}},
                 {"process:warms-slowly", WarmsTooSlowly{}},
                 {"process:acid-first", AcidFirst{}},
                 {"process:holds-together", HoldsTogether{}},
                 {"packet:may-hold", PacketMayHold{}},
                 {"dose:over-most", OverMostInAKilo{}}}};
    }

    static std::vector<std::string_view> kinds() {
        return {"ingredient", "allergen", "species", "no-species",      "role",
                "leaf",       "property", "process", "packet:may-hold", "dose:over-most"};
    }

    std::optional<When> unknown(std::string message, std::vector<std::string> hints) {
        problems_.add(node_.place, std::move(message), std::move(hints));
        return std::nullopt;
    }

    // "ph<5.5" in its parts; nothing, and a fault, where it is not of that form.
    struct Beyond {
        std::string_view name;
        bool below = false;
        double limit = 0;
    };
    std::optional<Beyond> beyond(std::string_view text) {
        const auto sign = text.find_first_of("<>");
        Beyond b;
        if (sign != std::string_view::npos) {
            b.name = text.substr(0, sign);
            b.below = text[sign] == '<';
            const auto limit = number_in(text.substr(sign + 1));
            b.limit = limit.value_or(0);
            if (limit && !b.name.empty()) return b;
        }
        unknown("\"" + std::string(node_.text) + "\" is no comparison with a number, such as property:ph<5.5", {});
        return std::nullopt;
    }

    // "green", "green>28": percent of the batch.
    std::optional<When> role(std::string_view text) {
        if (text.find_first_of("<>") == std::string_view::npos) return RoleInside{parse<Role>(text, node_.place, problems_)};
        const auto b = beyond(text);
        if (!b) return std::nullopt;
        if (b->below) return unknown("a share of a role is above a number, such as role:green>28", {});
        return RoleInside{parse<Role>(b->name, node_.place, problems_), b->limit};
    }

    // "raw>8": percent of the batch.
    std::optional<When> raw_leaf(std::string_view text) {
        const auto b = beyond(text);
        if (!b) return std::nullopt;
        if (b->below || b->name != "raw") return unknown("a share of raw leaf is written as leaf:raw>8", {});
        return RawLeafOver{b->limit};
    }

    std::optional<When> property(std::string_view text) {
        const auto b = beyond(text);
        if (!b) return std::nullopt;
        if (b->name == salt_of_meat) return PropertyBeyond{Property::salt_pct_of_meat, b->below, b->limit};
        if (const auto found = property_of(b->name)) return PropertyBeyond{*found, b->below, b->limit};
        std::vector<std::string_view> known{salt_of_meat};
        for_each_property([&](Property p) {
            known.push_back(info(p).key);
            if (!info(p).word.empty()) known.push_back(info(p).word);
        });
        return unknown("unknown property \"" + std::string(b->name) + "\"", nearest_words(b->name, known));
    }

    std::optional<When> process(std::string_view text) {
        const auto b = beyond(text);
        if (!b) return std::nullopt;
        return ProcessBeyond{parse<ProcessField>(b->name, node_.place, problems_), b->below, b->limit};
    }

    const JsonNode& node_;
    Problems& problems_;
};

std::vector<When> conditions_of(ObjectReader& reader, std::string_view key = "when") {
    std::vector<When> all;
    for (const auto& item : reader.list(key))
        if (item.kind != JsonNode::Kind::text) reader.problems().add(item.place, "a condition is a text such as \"ingredient:oxalate\"");
        else if (auto when = ConditionReader(item, reader.problems()).read()) all.push_back(std::move(*when));
    return all;
}

// What stands in braces in a text is filled in for the batch: the words there are, and quantities in the maker's units. A quantity outside
// braces would be told in metric alone.
void check_braces(ObjectReader& reader, const std::string& text) {
    static const std::vector<std::string_view> known{"core", "cooking", "value", "limit", "foods", "keeps", "cold"};
    std::string outside = text;
    for (auto open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
        const auto close = text.find('}', open);
        const std::string word = text.substr(open + 1, close == std::string::npos ? close : close - open - 1);
        outside.replace(open, word.size() + 1, word.size() + 1, ' ');
        if (close != std::string::npos && (marked_quantity(word) || std::find(known.begin(), known.end(), word) != known.end())) continue;
        reader.fault("text", "in braces stands neither a word that is filled in nor a quantity such as {60 C}: \"" + word + "\"",
                     nearest_words(word, known));
    }
    std::size_t at = 0;
    if (const auto bare = next_quantity(outside, at))
        reader.fault("text", "a quantity stands in braces, to be told in any unit: {" + outside.substr(at, bare->end - at) + "}");
}

// A number to fill in is there only where every condition is about one.
void check_numbers(ObjectReader& reader, const std::string& text, const std::vector<When>& all) {
    const auto has_number = [](const When& w) {
        return std::holds_alternative<PropertyBeyond>(w) || std::holds_alternative<ProcessBeyond>(w) ||
               std::holds_alternative<WarmsTooSlowly>(w);
    };
    const bool asks = text.find("{value}") != std::string::npos || text.find("{limit}") != std::string::npos;
    if (asks && (all.empty() || !std::all_of(all.begin(), all.end(), has_number)))
        reader.fault("text", "a number to fill in needs conditions on a property or the process, and no others");
}

std::vector<Species> some_species(ObjectReader& reader) {
    auto all = enumerated_list<Species>(reader, "species");
    if (all.empty()) reader.fault("species", "expected at least one species");
    return all;
}

CapRule cap_of(const JsonNode& node, Problems& problems) {
    ObjectReader c(node, problems);
    CapRule cap;
    cap.id = c.text("id");
    cap.property = enumerated<CapProperty>(c, "property");
    cap.text = c.text("text");
    cap.clause = c.text("clause");
    cap.source = c.text("source");
    cap.names = c.texts("names");
    cap.limit = c.number("limit");
    cap.at_least = c.flag("at_least");
    check_braces(c, cap.text);
    return cap;
}

AllergenRule allergen_rule_of(const JsonNode& node, Problems& problems) {
    ObjectReader a(node, problems);
    AllergenRule rule{a.text("allergen"), a.text("declare"), a.text("source"), a.number_if("from_mg_kg"), a.number_if("over_mg_kg")};
    a.text_or("note");
    if (rule.from_mg_kg && rule.over_mg_kg) a.fault("over_mg_kg", "\"from_mg_kg\" and \"over_mg_kg\" exclude each other");
    return rule;
}

CookRule cook_of(const JsonNode& node, Problems& problems) {
    ObjectReader c(node, problems);
    CookRule rule;
    rule.species = enumerated_list<Species>(c, "species");
    rule.marks = c.texts("marks");
    if (rule.species.empty() && rule.marks.empty()) c.fault("species", "expected at least one species, or the marks of a food");
    rule.core_c = c.number("core_c");
    rule.hold_s = c.number_if("hold_s").value_or(0);
    rule.at_once_c = c.number_if("at_once_c");
    rule.text = c.text("text");
    rule.source = c.text("source");
    check_braces(c, rule.text);
    if (rule.at_once_c && !(*rule.at_once_c > rule.core_c && rule.hold_s > 0))
        c.fault("at_once_c", "\"at_once_c\" is hotter than \"core_c\", which is kept for \"hold_s\"");
    if (!(rule.core_c >= 40 && rule.core_c <= 100)) c.fault("core_c", "a core temperature lies from 40 to 100 C");
    return rule;
}

MakingRule making_of(const JsonNode& node, Problems& problems) {
    ObjectReader m(node, problems);
    MakingRule rule;
    rule.id = m.text("id");
    rule.field = enumerated<ProcessField>(m, "field");
    rule.most = m.number("most");
    rule.text = m.text("text");
    rule.source = m.text("source");
    rule.when = conditions_of(m);
    rule.keeps = m.text_or("keeps");
    check_braces(m, rule.text);
    check_braces(m, rule.keeps);
    return rule;
}

Caution caution_of(const JsonNode& node, Problems& problems) {
    ObjectReader c(node, problems);
    Caution caution{c.text("id"),       c.text("text"),           c.text("source"),   conditions_of(c),
                    c.text_or("brief"), conditions_of(c, "only"), c.text_or("salted")};
    check_braces(c, caution.text);
    check_braces(c, caution.brief);
    check_braces(c, caution.salted);
    check_numbers(c, caution.text, caution.when);
    if (!caution.salted.empty()) check_numbers(c, caution.salted, caution.when);
    return caution;
}

}  // namespace

void read_rules(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    RuleSet rules;
    rules.code = r.text("code");
    rules.title = r.text("title");
    rules.edition = r.text("edition");
    r.text_or("note");
    const auto place = [&](const std::string& what, const JsonNode& item) {
        into.places.try_emplace("rules " + rules.code + " " + what, describe(problems.file(), item.place));
    };
    for (const auto& item : r.list("allergens")) {
        rules.allergens.push_back(allergen_rule_of(item, problems));
        place("allergen " + rules.allergens.back().allergen, item);
    }
    for (const auto& item : r.list("caps")) {
        rules.caps.push_back(cap_of(item, problems));
        place("cap " + rules.caps.back().id, item);
    }
    for (const auto& item : r.list("cooking")) {
        rules.cooking.push_back(cook_of(item, problems));
        place("cooking " + std::to_string(rules.cooking.size()), item);
    }
    for (const auto& item : r.list("making")) {
        rules.making.push_back(making_of(item, problems));
        place("making " + rules.making.back().id, item);
    }
    for (const auto& item : r.list("cautions")) {
        rules.cautions.push_back(caution_of(item, problems));
        place("caution " + rules.cautions.back().id, item);
    }
    for (const auto& item : r.list("groups")) {
        ObjectReader g(item, problems);
        rules.groups.push_back({g.text("word"), some_species(g)});
    }
    for (const auto& item : r.list("meat_word")) {
        ObjectReader m(item, problems);
        rules.meat_word.push_back({enumerated_list<Species>(m, "species"), m.number("most_fat_pct"), m.text("source")});
    }
    rules.wine_sulphites = quantity_if(r, "wine_sulphites", {"mg/kg"});
    rules.hot_holding = quantity_if(r, "hot_holding", {"C"});
    into.places.try_emplace("rules " + rules.code, describe(problems.file(), root.place));
    into.records.rules.push_back(std::move(rules));
}

}  // namespace standin
