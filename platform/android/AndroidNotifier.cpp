#include "android/AndroidNotifier.h"

#include <algorithm>
#include <iostream>

namespace firstdew::androidside {

using nlohmann::json;
using ports::NoticeAnswer;
using ports::PlannedNotice;

namespace {

/// A due reminder needs a time in the past. Any will do.
constexpr const char* kPast = "1970-01-01T00:00";

json entry(const ports::Notice& notice, const std::string& at)
{
    json actions = json::array();
    for (const ports::NoticeAction& a : notice.actions)
        actions.push_back({{"id", a.id}, {"label", a.label}});
    return {{"key", notice.key},
            {"at", at},
            {"title", notice.title},
            {"text", notice.text},
            {"actions", std::move(actions)}};
}

std::optional<NoticeAnswer> answerFrom(const json& j)
{
    if (!j.is_object() || !j.value("key", json()).is_string() || !j.value("answer", json()).is_string() ||
        !j.value("at", json()).is_string())
        return std::nullopt;
    const auto at = facts::LocalTime::parse(j["at"].get<std::string>());
    if (!at)
        return std::nullopt;
    return NoticeAnswer{j["key"], j["answer"], *at};
}

} // namespace

AndroidNotifier::AndroidNotifier(const JavaSide& java, std::map<std::string, std::string> words)
    : m_java(java), m_words(std::move(words))
{
}

/// Keeps visible notices whose cause still holds: a standing reminder that is not due is planned, and planned ones
/// stay.
void AndroidNotifier::show(const std::vector<ports::Notice>& due, const ports::Standing&)
{
    m_due = due;
    sync();
}

void AndroidNotifier::plan(std::vector<PlannedNotice> upcoming)
{
    m_planned = std::move(upcoming);
    sync();
}

void AndroidNotifier::speak(std::map<std::string, std::string> words)
{
    m_words = std::move(words);
    sync();
}

void AndroidNotifier::sync()
{
    json wanted = json::array();
    for (const ports::Notice& n : m_due)
        wanted.push_back(entry(n, kPast));
    for (const PlannedNotice& p : m_planned)
        if (std::none_of(m_due.begin(), m_due.end(), [&](const ports::Notice& n) { return n.key == p.notice.key; }))
            wanted.push_back(entry(p.notice, p.at.iso()));
    json asked = json::array();
    for (const ports::AskedSite& a : m_asked)
        asked.push_back({{"site", a.site}, {"name", a.name}, {"answered", a.answered ? a.answered->iso() : ""}});
    json all = {{"words", m_words}, {"wanted", std::move(wanted)}, {"asked", std::move(asked)}};
    if (all == m_held)
        return;
    const auto told = m_java.ask("sync", all);
    if (!told)
        return; // m_held stays unchanged, so that the next call tries again.
    m_held = std::move(all);
    m_leave = Leave{told->value("exact", false), told->value("allowed", false)};
}

std::vector<NoticeAnswer> AndroidNotifier::answers()
{
    const auto told = m_java.ask("answers", json::object());
    if (!told) {
        std::clog << "firstdew: answers from notices: " << told.error().message << '\n';
        return {};
    }
    std::vector<NoticeAnswer> out;
    for (const json& j : told->value("answers", json::array())) {
        const auto answer = answerFrom(j);
        if (!answer)
            std::clog << "firstdew: an answer from a notice cannot be read: " << j.dump() << '\n';
        // An empty answer keeps the count right, so that later answers are not blocked.
        out.push_back(answer.value_or(NoticeAnswer{}));
    }
    return out;
}

void AndroidNotifier::dropAnswers(std::size_t count) { (void)m_java.ask("taken", {{"count", count}}); }

void AndroidNotifier::askLeave() const { (void)m_java.ask("leave", json::object()); }

} // namespace firstdew::androidside
