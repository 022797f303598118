#include "support/places.hpp"

std::string test_data_folder() { return STANDIN_TEST_DATA; }
std::string examples_folder() { return STANDIN_EXAMPLES; }
std::string knowledge_folder() { return STANDIN_KNOWLEDGE; }
