// Which rows each constant rests on (data/constants_rest_on.csv), and that nothing is judged by a row that made it.
#include <algorithm>
#include <map>
#include <regex>
#include <set>

#include "published/calibration_rows.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace calibration;

namespace calibration_rests_test {

struct Rest {
    std::vector<std::string> constants;  ///< ids of parameters, a star for any end
    std::string what;                    ///< a row, or the paper where no row is meant
    std::vector<std::string> quantities;
    std::string how;
};

std::vector<std::string> split(const std::string& text, char at) {
    std::istringstream in(text);
    std::vector<std::string> parts;
    for (std::string part; std::getline(in, part, at);) parts.push_back(part);
    return parts;
}

std::vector<Rest> rests() {
    std::vector<Rest> all;
    for (const auto& c : calibration::cells_of("constants_rest_on.csv")) {
        REQUIRE(c.size() == 4);
        all.push_back(Rest{split(c[0], ' '), c[1], split(c[2], ','), c[3]});
    }
    return all;
}

bool is_cited_only(const Rest& r) { return r.quantities == std::vector<std::string>{"-"}; }

bool is_constant(const Rest& r) { return r.constants.front() != "the" && r.constants.front() != "twin"; }

bool means(const std::string& pattern, const std::string& id) {
    return pattern.back() == '*' ? id.rfind(pattern.substr(0, pattern.size() - 1), 0) == 0 : pattern == id;
}

bool names(const Rest& r, const std::string& id) {
    return std::any_of(r.constants.begin(), r.constants.end(), [&](const std::string& c) { return means(c, id); });
}

/// "36(4):538" of a journal that gives one, else what stands before the first comma.
std::string paper_of(const std::string& source) {
    static const std::regex issue(R"(\d+\(\d+\):\d+)");
    std::smatch found;
    return std::regex_search(source, found, issue) ? found.str() : source.substr(0, source.find(','));
}

const std::vector<Measured>& rows() {
    static const std::vector<Measured> all = measurements();
    return all;
}

bool is_of(const Rest& r, const Measured& m) {
    return r.what == m.what && std::find(r.quantities.begin(), r.quantities.end(), m.quantity) != r.quantities.end();
}

TEST_CASE("constants are named with rows that there are", "[calibration]") {
    for (const auto& r : rests()) {
        CAPTURE(r.what);
        CHECK_FALSE(r.how.empty());
        if (is_constant(r))
            for (const auto& constant : r.constants) {
                CAPTURE(constant);
                const auto& parameters = knowledge().records().parameters;
                CHECK(std::any_of(parameters.begin(), parameters.end(), [&](const auto& p) { return means(constant, p.id); }));
            }
        if (is_cited_only(r)) {
            CHECK(std::any_of(rows().begin(), rows().end(), [&](const Measured& m) { return paper_of(m.source) == r.what; }));
            continue;
        }
        for (const auto& quantity : r.quantities) {
            CAPTURE(quantity);
            CHECK(std::any_of(rows().begin(), rows().end(), [&](const Measured& m) { return m.what == r.what && m.quantity == quantity; }));
        }
    }
}

TEST_CASE("calibration: no constant rests on a row that it is judged by", "[calibration]") {
    const auto all = rests();
    const auto refitted = refits();
    for (const auto& m : rows()) {
        CAPTURE(m.what, m.quantity, m.set);
        bool named = false;
        for (const auto& r : all) {
            if (is_cited_only(r) || !is_of(r, m)) continue;
            named = true;
            if (m.set != "left out") {
                CHECK(m.set == "used");
                continue;
            }
            for (const auto& parameter : knowledge().records().parameters) {
                if (!names(r, parameter.id)) continue;
                CAPTURE(parameter.id, m.without);
                CHECK(refitted.at(m.without).count(parameter.id) == 1);
            }
        }
        CHECK(named == (m.set == "used" || m.set == "left out"));
    }
}

TEST_CASE("calibration: a constant that cites the paper of a row tells which of its rows it rests on", "[calibration]") {
    std::map<std::string, std::vector<const Measured*>> by_paper;
    for (const auto& m : rows()) by_paper[paper_of(m.source)].push_back(&m);
    std::map<std::string, std::string> sources;
    for (const auto& source : knowledge().records().sources) sources[source.id] = source.cite + '\n' + source.note;
    const auto all = rests();
    for (const auto& [paper, of_paper] : by_paper)
        for (const auto& parameter : knowledge().records().parameters) {
            const std::string rests_on = parameter.note + '\n' + sources[parameter.quantity.source];
            if (rests_on.find(paper) == std::string::npos) continue;
            CAPTURE(paper, parameter.id);
            CHECK(std::any_of(all.begin(), all.end(), [&](const Rest& r) {
                const bool here = is_cited_only(r)
                                      ? r.what == paper
                                      : std::any_of(of_paper.begin(), of_paper.end(), [&](const auto* m) { return is_of(r, *m); });
                return here && names(r, parameter.id);
            }));
        }
}

// What was looked up for the report alone: no constant of any kind, of foods included, may cite its paper.
TEST_CASE("calibration: what is kept aside is cited by nothing in the knowledge", "[calibration]") {
    std::string cited;
    for (const auto& source : knowledge().records().sources) cited += source.cite + '\n' + source.note + '\n';
    for (const auto& parameter : knowledge().records().parameters) cited += parameter.note + '\n';
    for (const auto& m : rows()) {
        if (m.set != "kept aside") continue;
        CAPTURE(m.what, m.quantity, m.source);
        CHECK(cited.find(paper_of(m.source)) == std::string::npos);
    }
}

}  // namespace calibration_rests_test
