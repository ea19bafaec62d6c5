#include "BathModel.h"

#include "Edge.h"
#include "words/BathWords.h"

#include <algorithm>

// The preparation: the lines to tick, the questions about the skin and the waits that follow from the answers.
namespace firstdew::viewmodels {

using namespace facts;
using protocol::PrepItem;

namespace {

constexpr int kHour = 60;
constexpr int kDay = 24 * kHour;

/// The moment that an answer stands for, in minutes before now; nothing where it asks for no wait.
std::optional<int> minutesSince(ui::LastAntiperspirant::Value answer)
{
    switch (answer) {
    case ui::LastAntiperspirant::HalfADay: return 12 * kHour;
    case ui::LastAntiperspirant::LastHours: return 2 * kHour;
    default: return std::nullopt;
    }
}

std::optional<int> minutesSince(ui::LastShave::Value answer)
{
    switch (answer) {
    case ui::LastShave::TwoDays: return 2 * kDay;
    case ui::LastShave::Yesterday: return kDay;
    case ui::LastShave::Today: return 0;
    default: return std::nullopt;
    }
}

std::optional<LocalTime> before(LocalTime now, std::optional<int> minutes)
{
    return minutes ? std::optional(now.plusMinutes(-*minutes)) : std::nullopt;
}

} // namespace

std::vector<PrepItem> BathModel::linesToTick() const
{
    auto lines = protocol::preparationFor(m_choice.site(), m_choice.machine(), m_choice.way(), m_answers.smallWounds);
    std::erase_if(lines, [](PrepItem i) { return i == PrepItem::NoAntiperspirant || i == PrepItem::NotShaved; });
    return lines;
}

QList<ui::PrepLine> BathModel::preparation() const
{
    QList<ui::PrepLine> out;
    for (const auto item : linesToTick())
        out.append({ui::shown(item), words::prepText(item, m_choice.site()), isDone(item),
                    ui::shown(protocol::drawingsOf(item, m_choice.site()))});
    return out;
}

QStringList BathModel::waits() const
{
    QStringList out;
    for (const auto& w : protocol::waitsFor(m_answers, m_store.now()))
        out.append(words::waitSentence(w, m_choice.site(), m_store.situation().today));
    return out;
}

bool BathModel::ready() const
{
    const auto list = linesToTick();
    return allowed() && skinTold() && protocol::waitsFor(m_answers, m_store.now()).empty() &&
           std::all_of(list.begin(), list.end(), [&](PrepItem i) { return isDone(i); });
}

void BathModel::tick(ui::PrepItem::Value item)
{
    const auto i = ui::core(item);
    if (!i)
        return;
    m_done.contains(*i) ? m_done.erase(*i) : m_done.insert(*i);
    emit changed();
}

/// Nothing is taken for said that was not.
void BathModel::answered(PrepItem item, bool said)
{
    said ? m_asked.insert(item) : m_asked.erase(item);
    emit changed();
}

void BathModel::setSmallCuts(ui::SmallCuts::Value answer)
{
    m_answers.smallWounds = answer == ui::SmallCuts::Yes;
    answered(PrepItem::WoundsCovered, answer != ui::SmallCuts::NotSaid);
}

void BathModel::setAntiperspirant(ui::LastAntiperspirant::Value answer)
{
    m_answers.antiperspirant = before(m_store.now(), minutesSince(answer));
    answered(PrepItem::NoAntiperspirant, answer != ui::LastAntiperspirant::NotSaid);
}

void BathModel::setShaved(ui::LastShave::Value answer)
{
    m_answers.shaved = before(m_store.now(), minutesSince(answer));
    answered(PrepItem::NotShaved, answer != ui::LastShave::NotSaid);
}

} // namespace firstdew::viewmodels
