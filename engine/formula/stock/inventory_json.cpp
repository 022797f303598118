#include <algorithm>

#include "core/typed_reader.hpp"
#include "formula/formats/formula_json.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/stock/inventory.hpp"
#include "formula/stock/stock_gatherer.hpp"
#include "formula/words/stock_words.hpp"

namespace standin {
namespace {

using Node = JsonNode::Kind;

class JsonInventory {
public:
    JsonInventory(std::string_view file, const Knowledge& knowledge, const Formula* formula)
        : file_(file), knowledge_(knowledge), problems_(std::string(file)), gatherer_(knowledge, formula, troubles_) {}

    Result<Inventory> read(const JsonNode& root) {
        take(root);
        troubles_.add(problems_.errors());
        Inventory all = gatherer_.take();
        if (troubles_.any()) return troubles_.failure();
        return all;
    }

private:
    void take(const JsonNode& root) {
        ObjectReader reader(root, problems_);
        reader.text_or("note");
        for (const auto& item : reader.list("have", true)) have(item);
        for (const auto& item : reader.list("not")) {
            if (item.kind != Node::text)
                problems_.add(item.place, "what is not on hand must be text, not " + std::string(kind_name(item.kind)));
            else gatherer_.name(item.text, origin(item), false);
        }
        if (const JsonNode* flag = reader.child("complete", Node::boolean)) gatherer_.complete(flag->boolean, describe(file_, flag->place));
    }

    void have(const JsonNode& item) {
        ObjectReader reader(item, problems_);
        const JsonNode* name = reader.child("ingredient", Node::text, true);
        const JsonNode* amount = reader.child("amount", Node::text);
        const bool plenty = reader.flag("plenty");
        if (plenty && amount) reader.fault("plenty", "both \"amount\" and \"plenty\": expected one of them");
        if (!name) return;
        gatherer_.plenty = plenty;
        gatherer_.holds.clear();
        gatherer_.dangers = told_hazards(name->text, knowledge_);
        for (const auto& told : gatherer_.dangers) gatherer_.note(told);
        if (auto danger = danger_in(name->text, knowledge_)) {
            danger->where = describe(file_, name->place);
            return troubles_.add(std::move(*danger));
        }
        if (!amount || is_some(amount->text)) return gatherer_.name(name->text, origin(*name), true);
        auto line = JoinedLine(file_, *amount, *name).read(knowledge_, {});
        if (line) gatherer_.have(*line, amount->text + " " + name->text);
        else gatherer_.not_read(std::move(line.error()), name->text, true);
    }

    Origin origin(const JsonNode& node) const { return Origin::joined(file_, {{0, node.place}}); }

    // "some", "2 cans": an amount without a weight.
    bool is_some(const std::string& amount) const {
        const std::string line = amount + " food";
        const auto ways = without_loose_amount(line, knowledge_);
        return stock_line(line, knowledge_).says == StockWord::some || std::find(ways.begin(), ways.end(), "food") != ways.end();
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Problems problems_;
    Troubles troubles_;
    Gatherer gatherer_;
};

}  // namespace

Result<Inventory> read_json_inventory(const JsonNode& root, std::string_view file, const Knowledge& knowledge, const Formula* formula) {
    return JsonInventory(file, knowledge, formula).read(root);
}

}  // namespace standin
