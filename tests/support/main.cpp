#define CATCH_CONFIG_MAIN
#include "support/catch.hpp"
