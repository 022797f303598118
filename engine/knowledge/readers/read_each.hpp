// The shape of nearly every table: a list of objects, each a record with a name of its own.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/typed_reader.hpp"
#include "knowledge/readers/reading.hpp"

namespace standin {

/// `read` makes a record of each object of the list `key`; it is put into `to`, and its place kept as "`what` `name`".
template <class Record, class Read>
void read_each(ObjectReader& reader, std::string_view key, std::string_view what, std::string Record::*name, Read read,
               std::vector<Record>& to, KnowledgeFiles& into) {
    for (const auto& item : reader.list(key, true)) {
        ObjectReader one(item, reader.problems());
        Record record = read(one);
        into.places.try_emplace(std::string(what) + " " + record.*name, describe(reader.problems().file(), item.place));
        to.push_back(std::move(record));
    }
}

}  // namespace standin
