#include "knowledge/readers/colour_survey.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <set>

#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/reading.hpp"

namespace standin {
namespace {

std::optional<std::uint32_t> rgb_of(const std::string& hex) {
    constexpr std::size_t letters = 7;  // "#4b5d16"
    std::uint32_t rgb = 0;
    if (hex.size() != letters || hex.front() != '#') return std::nullopt;
    const auto end = hex.data() + hex.size();
    const auto read = std::from_chars(hex.data() + 1, end, rgb, 16);
    return read.ptr == end ? std::optional(rgb) : std::nullopt;
}

ColourSurvey read_survey(const JsonNode& root, Problems& problems) {
    ObjectReader r(root, problems);
    ColourSurvey survey;
    r.text("note");
    survey.source = r.text("source");
    survey.words = r.texts("words");
    for (const auto& item : r.list("names")) {
        ObjectReader n(item, problems);
        SurveyedName name;
        name.name = n.text("name");
        const auto rgb = rgb_of(n.text("rgb"));
        if (!rgb) n.fault("rgb", "expected a colour such as #4b5d16");
        name.rgb = rgb.value_or(0);
        const std::string says = n.text("says");
        const auto word = std::find(survey.words.begin(), survey.words.end(), says);
        if (word == survey.words.end()) n.fault("says", "none of the words: \"" + says + "\"");
        name.word = static_cast<std::size_t>(word - survey.words.begin());
        survey.names.push_back(std::move(name));
    }
    return survey;
}

}  // namespace

void read_colour_names(const JsonNode& root, Problems& problems, KnowledgeFiles&) { read_survey(root, problems); }

Result<ColourSurvey> colour_survey_from(std::string_view text, const std::string& file) {
    const auto root = read_json(text, file);
    if (!root) return Failure(root.error());
    Problems problems(file);
    ColourSurvey survey = read_survey(*root, problems);
    if (!problems.empty()) return Failure(join(problems.errors()));
    return survey;
}

std::vector<std::string> faults_in(const ColourSurvey& survey, const Records& records) {
    std::vector<std::string> faults;
    const auto& sources = records.sources;
    if (std::none_of(sources.begin(), sources.end(), [&](const auto& source) { return source.id == survey.source; }))
        faults.push_back("source \"" + survey.source + "\" is not in sources.json");
    std::set<std::string> names;
    std::set<std::size_t> words;
    for (const auto& name : survey.names) {
        if (!names.insert(name.name).second) faults.push_back("this stands a second time: " + name.name);
        words.insert(name.word);
    }
    for (std::size_t w = 0; w < survey.words.size(); ++w)
        if (!words.count(w)) faults.push_back("no name comes to \"" + survey.words[w] + "\"");
    return faults;
}

}  // namespace standin
