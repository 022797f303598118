// A cache that forgets what was asked for longest ago. Any number of threads may ask at once.
#pragma once

#include <cstddef>
#include <list>
#include <memory>
#include <mutex>
#include <string>
#include <unordered_map>
#include <utility>

namespace standin {

template <class Value>
class Recent {
public:
    explicit Recent(std::size_t most) : most_(most) {}

    /// What `key` stands for, made by `make()` where it is not known. It stays as it is for whoever holds it, forgotten or not.
    template <class Make>
    std::shared_ptr<const Value> get(const std::string& key, Make make) {
        if (auto known = find(key)) return known;
        return keep(key, std::make_shared<const Value>(make()));  // made without the lock: two threads may make the same, once
    }

private:
    using Entry = std::pair<std::string, std::shared_ptr<const Value>>;

    std::shared_ptr<const Value> find(const std::string& key) {
        const std::scoped_lock lock(guard_);
        const auto place = places_.find(key);
        if (place == places_.end()) return nullptr;
        newest_first_.splice(newest_first_.begin(), newest_first_, place->second);
        return place->second->second;
    }

    std::shared_ptr<const Value> keep(const std::string& key, std::shared_ptr<const Value> made) {
        const std::scoped_lock lock(guard_);
        if (const auto place = places_.find(key); place != places_.end()) return place->second->second;
        newest_first_.emplace_front(key, made);
        places_[key] = newest_first_.begin();
        if (newest_first_.size() > most_) {
            places_.erase(newest_first_.back().first);
            newest_first_.pop_back();
        }
        return made;
    }

    std::size_t most_;
    std::mutex guard_;
    std::list<Entry> newest_first_;
    std::unordered_map<std::string, typename std::list<Entry>::iterator> places_;
};

}  // namespace standin
