#include "formula/formats/formula_jsonld.hpp"

#include <algorithm>
#include <array>

#include "core/typed_reader.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/formats/html_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/lexer/text_lines.hpp"

namespace standin {
namespace {

using Node = JsonNode::Kind;

constexpr std::size_t most_scripts = 50;  // no page of one recipe has more

// "Recipe", "schema:Recipe", "https://schema.org/Recipe"
bool names_recipe(const std::string& type) {
    const auto cut = type.find_last_of("/:#");
    return (cut == std::string::npos ? type : type.substr(cut + 1)) == "Recipe";
}

bool is_recipe(const JsonNode& node) {
    const JsonNode* type = node.member("@type");
    if (!type) return false;
    if (type->kind == Node::text) return names_recipe(type->text);
    return std::any_of(type->items.begin(), type->items.end(),
                       [](const JsonNode& one) { return one.kind == Node::text && names_recipe(one.text); });
}

// The strings under a node, each with its place; of an object its text or name.
void texts_in(const JsonNode& node, std::vector<const JsonNode*>& out) {
    if (node.kind == Node::text) out.push_back(&node);
    for (const auto& item : node.items) texts_in(item, out);
    if (node.kind != Node::object) return;
    for (const auto* key : {"@value", "@list", "text", "name"})
        if (const JsonNode* inner = node.member(key)) return texts_in(*inner, out);
}

std::vector<const JsonNode*> texts_of(const JsonNode& recipe, std::initializer_list<std::string_view> keys) {
    std::vector<const JsonNode*> out;
    for (const auto key : keys)
        if (const JsonNode* node = recipe.member(key); node && out.empty()) texts_in(*node, out);
    return out;
}

std::vector<const JsonNode*> ingredients_of(const JsonNode& recipe) { return texts_of(recipe, {"recipeIngredient", "ingredients"}); }

// The tree is at most 64 deep: read_json sees to that.
void recipes_in(const JsonNode& node, std::vector<const JsonNode*>& out) {
    if (is_recipe(node) && !ingredients_of(node).empty()) out.push_back(&node);
    else {
        for (const auto& item : node.items) recipes_in(item, out);
        for (const auto& member : node.members) recipes_in(member.node, out);
    }
}

bool same_ingredients(const JsonNode& a, const JsonNode& b) {
    const auto x = ingredients_of(a), y = ingredients_of(b);
    return std::equal(x.begin(), x.end(), y.begin(), y.end(), [](const JsonNode* l, const JsonNode* r) { return l->text == r->text; });
}

std::string shown_text(const JsonNode& node) { return one_line(without_markup(node.text)); }

// "12 links", 12, or a list of them: the longest says most.
std::string yield_of(const JsonNode& recipe) {
    const JsonNode* node = recipe.member("recipeYield");
    if (!node) return {};
    if (node->kind == Node::number) return plain_number(node->number);
    std::string best;
    std::vector<const JsonNode*> texts;
    texts_in(*node, texts);
    for (const auto* one : texts)
        if (one->text.size() > best.size()) best = shown_text(*one);
    return best;
}

class RecipeReader {
public:
    RecipeReader(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge) {}

    Draft read(const JsonNode& recipe) {
        if (const auto names = texts_of(recipe, {"name", "headline"}); !names.empty()) draft_.formula.title = shown_text(*names.front());
        if (const auto notes = texts_of(recipe, {"description"}); !notes.empty()) draft_.formula.note = without_markup(notes.front()->text);
        if (const auto yield = yield_of(recipe); !yield.empty())
            draft_.formula.note += (draft_.formula.note.empty() ? "yield: " : "\nyield: ") + yield;
        for (const auto key : {"recipeIngredient", "ingredients"})
            if (const JsonNode* node = recipe.member(key)) {
                values(*node);
                break;
            }
        for (const auto* step : texts_of(recipe, {"recipeInstructions"})) process(step->text);
        if (const auto steps = draft_.formula.method.size(); steps > 0)
            draft_.formula.read_as.push_back(make_reason(ReasonKind::method_kept, {{"steps", {}, static_cast<double>(steps), ""}}));
        for (const auto& member : recipe.members)
            if (member.key == "name" || member.key == "headline") title(member.node);
            else if (!is_read_elsewhere(member.key)) look(member.node, member.key != "description" && member.key != "recipeYield");
        return std::move(draft_);
    }

private:
    // Read as lines, or said by others about the recipe.
    static bool is_read_elsewhere(const std::string& key) {
        constexpr std::array<std::string_view, 9> keys{
            "recipeIngredient", "ingredients", "review", "aggregateRating", "author", "publisher", "nutrition", "image", "video"};
        return std::find(keys.begin(), keys.end(), key) != keys.end();
    }

    void title(const JsonNode& node) {
        if (node.kind == Node::text) look_through_title(draft_, without_markup(node.text), describe(file_, node.place), knowledge_);
    }

    // What was told of the formula when it was written: told again of what is read.
    static bool was_told(const JsonNode& node) {
        const JsonNode* name = node.member("name");
        return node.kind == Node::object && name && name->kind == Node::text && name->text == "told when written";
    }

    // Every text of the recipe beside its lines, however deep; addresses of pages and pictures are none.
    void look(const JsonNode& node, bool lost) {
        if (was_told(node)) return;
        if (node.kind == Node::text && node.text.find("://") == std::string::npos)
            look_through(draft_, without_markup(node.text), describe(file_, node.place), knowledge_, lost);
        for (const auto& item : node.items) look(item, lost);
        for (const auto& member : node.members)
            if (member.key.empty() || member.key.front() != '@') look(member.node, lost);
    }

    // Every value of the list is read or refused with its place.
    void values(const JsonNode& node) {
        if (node.kind == Node::list) {
            for (const auto& item : node.items) values(item);
            return;
        }
        if (node.kind == Node::text) return lines(node);
        if (node.kind == Node::object) {
            for (const auto* key : {"@value", "text"})
                if (const JsonNode* inner = node.member(key)) return values(*inner);
            if (const JsonNode* inner = node.member("@list")) return values(*inner);
            if (const JsonNode whole = amount_and_name(node); !whole.text.empty()) return lines(whole);
        }
        draft_.troubles.add({Trouble::bad_data,
                             "an ingredient line must be text, not " + std::string(kind_name(node.kind)) +
                                 (node.kind == Node::object ? " without \"@value\", \"text\" or \"name\"" : ""),
                             describe(file_, node.place),
                             {}});
    }

    // {"name": "almonds", "value": 40, "unitText": "g"}, or an amount as an object of its own.
    static JsonNode amount_and_name(const JsonNode& node) {
        JsonNode line;
        line.kind = Node::text;
        line.place = node.place;
        const auto add = [&](const JsonNode* part) {
            if (!part) return;
            const std::string words = part->kind == Node::number ? plain_number(part->number) : part->kind == Node::text ? part->text : "";
            if (!words.empty()) line.text += (line.text.empty() ? "" : " ") + words;
        };
        const JsonNode* amount = node.member("amount") ? node.member("amount") : node.member("requiredQuantity");
        const JsonNode& told = amount && amount->kind == Node::object ? *amount : node;
        if (amount && amount->kind != Node::object) add(amount);
        for (const auto* key : {"value", "unitText", "unit"}) add(told.member(key));
        if (const JsonNode* code = told.member("unitCode"); code && code->kind == Node::text) add_unit(code->text, line.text);
        const JsonNode* name = node.member("name") ? node.member("name") : node.member("item");
        if (!name) return JsonNode{};
        add(name);
        return line;
    }

    // The units of UN/CEFACT Recommendation 20, as schema.org writes them.
    static void add_unit(const std::string& code, std::string& line) {
        constexpr std::array<std::array<std::string_view, 2>, 6> codes{
            {{"GRM", "g"}, {"KGM", "kg"}, {"MLT", "ml"}, {"LTR", "l"}, {"ONZ", "oz"}, {"LBR", "lb"}}};
        for (const auto& [name, unit] : codes)
            if (code == name) line += " " + std::string(unit);
    }

    // Some sites put the whole list into one string, a line each.
    void lines(const JsonNode& item) {
        const std::string all = without_markup(item.text);
        for (const auto& one : text_lines(all)) line(std::string(one.text), item);
    }

    void line(const std::string& text, const JsonNode& item) {
        if (draft_.hopeless()) return;
        take_ingredient_line(draft_, text, describe(file_, item.place), Origin::joined(file_, {{0, item.place}}), knowledge_);
    }

    // Of the process only what process_words would write again word for word: "rest: 36 h"; a step of a cook's instructions is kept as
    // such.
    void process(const std::string& text) {
        const auto [key, value] = key_value(text);
        Process one;
        const auto words = key.empty() || set_process(one, key, value) ? decltype(process_words(one)){} : process_words(one);
        const bool ours =
            std::any_of(words.begin(), words.end(), [&, k = key, v = value](const auto& w) { return w.first == k && w.second == v; });
        if (ours) {
            set_process(draft_.formula.process, key, value);
            return;
        }
        const std::string plain = without_markup(text);
        for (const auto& step : text_lines(plain)) draft_.formula.method.emplace_back(step.text);
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Draft draft_;
};

Result<Draft> read_one(const std::vector<const JsonNode*>& recipes, std::string_view file, const Knowledge& knowledge) {
    for (const auto* other : recipes)
        if (!same_ingredients(*recipes.front(), *other)) {
            Error error{Trouble::bad_data, "several recipes in one file: expected one", describe(file, other->place), {}};
            for (const auto* recipe : recipes)
                if (const auto names = texts_of(*recipe, {"name"}); !names.empty() && error.hints.size() < 5)
                    error.hints.push_back(shown_text(*names.front()));
            return Failure(std::move(error));
        }
    return RecipeReader(file, knowledge).read(*recipes.front());
}

// The script with as much before it as it takes for places to come out as those in the page.
std::string in_place(std::string_view page, const std::string& script) {
    const auto at = page.find(script);
    if (at == std::string_view::npos) return script;
    const auto before = page.substr(0, at);
    const auto newline = before.rfind('\n');
    const std::size_t column = newline == std::string_view::npos ? at : at - newline - 1;
    return std::string(static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')), '\n') + std::string(column, ' ') + script;
}

// Comment marks and the like around the data ("//<![CDATA[") become blanks.
std::string data_only(std::string script) {
    for (const std::string_view mark : {"<![CDATA[", "]]>"})
        if (const auto at = script.find(mark); at != std::string::npos) script.replace(at, mark.size(), mark.size(), ' ');
    const auto first = script.find_first_of("{["), last = script.find_last_of("}]");
    for (std::size_t i = 0; i < script.size(); ++i)
        if ((i < first || i > last || last == std::string::npos) && script[i] != '\n') script[i] = ' ';
    return script;
}

// Line ends inside strings are no JSON, but pages have them: then places are lost, not the recipe.
Result<JsonNode> read_script(std::string_view page, const std::string& script, std::string_view file) {
    std::string text = data_only(in_place(page, script));
    auto root = read_json(text, file);
    if (root) return root;
    auto again = read_json(one_line(std::move(text)), file);
    return again ? again : root;
}

}  // namespace

bool is_json_ld(const JsonNode& root) {
    if (root.kind == JsonNode::Kind::list) return !root.items.empty();
    return root.member("@context") || root.member("@graph") || root.member("@type") || root.member("recipeIngredient");
}

Result<Draft> read_json_ld(const JsonNode& root, std::string_view file, const Knowledge& knowledge) {
    std::vector<const JsonNode*> recipes;
    recipes_in(root, recipes);
    if (recipes.empty() && !ingredients_of(root).empty()) recipes.push_back(&root);
    if (recipes.empty())
        return failure(Trouble::bad_data, "no Recipe with a recipeIngredient list in this JSON-LD", describe(file, root.place));
    return read_one(recipes, file, knowledge);
}

Result<Draft> read_page(std::string_view page, std::string_view file, const Knowledge& knowledge) {
    std::vector<JsonNode> roots;
    std::vector<const JsonNode*> recipes;
    std::optional<Error> broken;
    auto scripts = data_scripts(page);
    if (scripts.size() > most_scripts) scripts.resize(most_scripts);
    for (const auto& script : scripts) {
        auto root = read_script(page, script, file);
        if (root) roots.push_back(std::move(*root));
        else if (!broken) broken = std::move(root.error());
    }
    for (const auto& root : roots) recipes_in(root, recipes);
    if (!recipes.empty()) return read_one(recipes, file, knowledge);
    if (broken) return Failure(std::move(*broken));
    return failure(Trouble::bad_data, "no recipe in this page: expected a script of schema.org data with a Recipe", describe(file, {1, 1}));
}

}  // namespace standin
