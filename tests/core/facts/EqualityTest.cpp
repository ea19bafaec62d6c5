#include "facts/Fact.h"

#include <catch2/catch.hpp>
#include <functional>

using namespace firstdew::facts;

// Import, repair and the journal tell facts apart by comparing them: a field that did not count there could be lost
// without a word. Each kind is gone through by its own list of fields, so that a new one is held to this as well.

namespace {

/// Gives one field another value, whatever its type.
struct Change {
    template <class T>
    static void value(std::optional<T>& of)
    {
        if (of)
            of.reset();
        else
            of.emplace();
    }
    template <class E>
    static void value(SetOf<E>& of)
    {
        const E last = allOf<E>().back();
        if (of.contains(last))
            of = {};
        else
            of.insert(last);
    }
    template <class E>
    requires std::is_enum_v<E>
    static void value(E& of) { of = of == allOf<E>().front() ? allOf<E>().back() : allOf<E>().front(); }
    static void value(bool& of) { of = !of; }
    static void value(std::string& of) { of += "x"; }
    static void value(std::vector<int>& of) { of.push_back(1); }
    static void value(LocalDate& of) { of = of + 1; }
    static void value(MinuteOfDay& of) { ++of.minute; }
    static void value(LocalTime& of) { ++of.at.minute; }
    template <class N>
    requires std::is_arithmetic_v<N>
    static void value(N& of) { of += 1; }
    template <class Unit>
    requires std::is_aggregate_v<Unit>
    static void value(Unit& of)
    {
        auto& [number] = of;
        number += 1;
    }
};

/// Changes the field at `wanted`, and where `inside`, what an optional one holds rather than whether it holds anything.
struct ChangeOne {
    int wanted = 0;
    bool inside = false;
    int at = 0;
    std::string_view name{};
    template <class T>
    void operator()(std::string_view field, T& of, Range = {})
    {
        if (at++ != wanted)
            return;
        name = field;
        if constexpr (requires { of.value(); }) {
            if (inside)
                return Change::value(*of);
        }
        Change::value(of);
    }
};

struct FillOptionals {
    template <class T>
    void operator()(std::string_view, T& of, Range = {}) const
    {
        if constexpr (requires { of.emplace(); })
            of.emplace();
    }
};

/// How many fields there are; each has been checked to make a difference.
template <class P>
int eachFieldCounts(const P& base, bool inside)
{
    for (int field = 0;; ++field) {
        P other = base;
        ChangeOne change{field, inside};
        P::fields(other, change);
        if (change.at <= field)
            return field;
        INFO(P::kind << ", " << change.name);
        CHECK_FALSE(Payload(base) == Payload(other));
        CHECK_FALSE(Payload(other) == Payload(base));
        CHECK(Payload(other) == Payload(P(other)));
    }
}

} // namespace

TEST_CASE("facts of one kind that differ in any field are not equal")
{
    int kinds = 0;
    forEachPayload([&](auto each) {
        using P = typename decltype(each)::type;
        ++kinds;
        P filled{};
        P::fields(filled, FillOptionals{});
        CHECK(eachFieldCounts(P{}, false) > 0);
        CHECK(eachFieldCounts(filled, false) > 0);
        CHECK(eachFieldCounts(filled, true) > 0);
    });
    CHECK(kinds == std::variant_size_v<Payload>);
}

TEST_CASE("facts that differ in person, time, recording or correction are not equal")
{
    const Fact fact{"a1", "p1", {LocalDate(20000), {480}}, 7, "", Question{"how long?"}};
    CHECK(fact == Fact(fact));
    const std::function<void(Fact&)> changes[] = {
        [](Fact& f) { f.id = "a2"; },
        [](Fact& f) { f.person = "p2"; },
        [](Fact& f) { f.happened.date = LocalDate(20001); },
        [](Fact& f) { f.happened.at = {481}; },
        [](Fact& f) { f.recordedMs = 8; },
        [](Fact& f) { f.corrects = "a0"; },
        [](Fact& f) { f.payload = Question{"how often?"}; },
        [](Fact& f) { f.payload = Retraction{"how long?"}; },
    };
    for (const auto& change : changes) {
        Fact other = fact;
        change(other);
        CHECK_FALSE(other == fact);
    }
}
