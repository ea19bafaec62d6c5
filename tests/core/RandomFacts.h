#pragma once

#include "codec/FieldText.h"
#include "facts/Fact.h"

#include <algorithm>
#include <fmt/format.h>
#include <random>
#include <utility>

// Any fact there can be, drawn from the payloads' own lists of fields: a new kind or field is drawn without a change
// here.
namespace firstdew::testing {

class RandomFacts {
public:
    explicit RandomFacts(unsigned long long seed) : m_random(seed) {}

    facts::Fact next()
    {
        facts::Fact fact;
        fact.id = fmt::format("{:016x}{:016x}", m_random(), m_random());
        fact.person = fmt::format("{:032x}", below(3) + 1);
        (*this)("", fact.happened);
        (*this)("", fact.recordedMs);
        if (below(5) == 0)
            fact.corrects = fmt::format("{:032x}", m_random());
        fact.payload = payload(below(std::variant_size_v<facts::Payload>), static_cast<facts::Payload*>(nullptr));
        return fact;
    }

    std::vector<facts::Fact> many(int n)
    {
        std::vector<facts::Fact> out;
        for (int i = 0; i < n; ++i)
            out.push_back(next());
        return out;
    }

    template <class T>
    void operator()(std::string_view name, T& into)
    {
        using namespace facts;
        if constexpr (codec::isOptional<T>) {
            if (below(2) == 0)
                (*this)(name, into.emplace());
            if constexpr (std::same_as<T, std::optional<std::string>>)
                if (into && into->empty()) // a text that is there says something: an empty cell of a table is none
                    into.reset();
        } else if constexpr (HasTokens<T>) {
            into = static_cast<T>(below(Tokens<T>::list.size()));
        } else if constexpr (codec::isSet<T>) {
            fillSet(into);
        } else if constexpr (std::same_as<T, bool>) {
            into = below(2) == 0;
        } else if constexpr (std::same_as<T, std::string>) {
            into = text();
        } else if constexpr (std::same_as<T, LocalDate>) {
            into = LocalDate(static_cast<int>(below(60'000)) - 20'000);
        } else if constexpr (std::same_as<T, MinuteOfDay>) {
            into.minute = static_cast<int>(below(1440));
        } else if constexpr (std::same_as<T, LocalTime>) {
            (*this)(name, into.date), (*this)(name, into.at);
        } else {
            (*this)(name, into, codec::possible<T>());
        }
    }

    template <class T>
    void operator()(std::string_view name, T& into, facts::Range range)
    {
        if constexpr (codec::isOptional<T>)
            (*this)(name, into.emplace(), range);
        else if constexpr (std::same_as<T, std::vector<int>>)
            for (auto n = below(4); n > 0; --n)
                (*this)(name, into.emplace_back(), range);
        else {
            auto& number = codec::bare(into);
            using N = std::remove_reference_t<decltype(number)>;
            if constexpr (std::integral<N>)
                number =
                    std::uniform_int_distribution<N>(static_cast<N>(range.least), static_cast<N>(range.most))(m_random);
            else
                number = std::uniform_real_distribution<N>(range.least, range.most)(m_random);
        }
    }

private:
    std::mt19937_64 m_random;

    std::size_t below(std::size_t n) { return m_random() % n; }

    template <class E>
    void fillSet(facts::SetOf<E>& into)
    {
        for (const E e : facts::allOf<E>())
            if (below(2) == 0)
                into.insert(e);
    }

    /// Everything that files, tables and calendars are known to trip over.
    std::string text()
    {
        constexpr std::string_view pieces[] = {
            "",           " ",  "dry",  "\"",   ",", ";",      "\n",          "\r\n",
            "\r",         "\t", "\\",   "=1+1", "'", "\u00c4", "\u96e8",      "\u0645\u0631",
            "\U0001F4A7", "-",  "null", "0",    "@", ":",      "a long word "};
        std::string out;
        for (auto n = below(8); n > 0; --n)
            out += pieces[below(std::size(pieces))];
        return out;
    }

    template <class... P>
    facts::Payload payload(std::size_t index, std::variant<P...>*)
    {
        facts::Payload out;
        std::size_t i = 0;
        ((i++ == index ? void(out = filled<P>()) : void()), ...);
        return out;
    }

    template <class P>
    P filled()
    {
        P p{};
        P::fields(p, *this);
        // What an import refuses as contradictory is put in order.
        if constexpr (std::same_as<P, facts::Away>) {
            if (p.to < p.from)
                std::swap(p.from, p.to);
        } else if constexpr (std::same_as<P, facts::OtherTreatment>) {
            if (p.until && *p.until < p.from)
                std::swap(*p.until, p.from);
        } else if constexpr (std::same_as<P, facts::Course>) {
            std::ranges::sort(p.days);
            p.days.erase(std::ranges::unique(p.days).begin(), p.days.end());
        }
        return p;
    }
};

} // namespace firstdew::testing
