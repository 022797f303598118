// Where the tests find what stands in files.
#pragma once

#include <string>

std::string test_data_folder();
std::string examples_folder();
std::string knowledge_folder();
