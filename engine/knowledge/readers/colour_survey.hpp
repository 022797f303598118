// Names that people give to colours, by a survey (knowledge/colour_names.json). Only the words of colours read them, so they are no part of
// the records: they are packed as they stand.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/records/records.hpp"
#include "standin/result.hpp"

namespace standin {

struct SurveyedName {
    std::string name;       ///< as the survey has it
    std::uint32_t rgb = 0;  ///< what it was said of most, sRGB
    std::size_t word = 0;   ///< the word of a maker that it comes to, counted in `ColourSurvey::words`
};

struct ColourSurvey {
    std::string source;
    std::vector<std::string> words;
    std::vector<SurveyedName> names;
};

inline constexpr std::string_view colour_names_file = "colour_names.json";

/// `text` of such a file; `file` names it in messages.
Result<ColourSurvey> colour_survey_from(std::string_view text, const std::string& file);

/// What is wrong with it beside the records it goes with: no such source, names or colours said twice.
std::vector<std::string> faults_in(const ColourSurvey& survey, const Records& records);

}  // namespace standin
