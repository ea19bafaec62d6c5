#include "DiaryModel.h"

#include "Edge.h"
#include "protocol/Area.h"
#include "protocol/Sweat.h"
#include "protocol/WayIn.h"
#include "situation/Working.h"
#include "words/ComparedWords.h"
#include "words/Names.h"
#include "words/ScoreWords.h"
#include "words/WorkingWords.h"

#include <QRandomGenerator>

#include <algorithm>
#include <limits>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

template <class P>
void earliest(const std::vector<Entry<P>>& entries, std::optional<LocalDate>& out)
{
    if (!entries.empty() && (!out || entries.front().happened.date < *out))
        out = entries.front().happened.date;
}

ui::DayEntry entryOf(const Entry<Session>& e)
{
    const Session& s = e.payload;
    ui::DayEntry out;
    out.kind = ui::EntryKind::Session;
    out.treated = ui::shown(s.site);
    out.waveform = ui::shown(s.waveform);
    out.completed = s.completed;
    out.comfortable = s.comfortable ? s.comfortable->mA : -1;
    out.felt = s.comfort.has_value();
    out.comfort = ui::shown(s.comfort.value_or(Comfort{}));
    out.note = text(s.note);
    return out;
}

ui::DayEntry entryOf(const Entry<Hdss>& e)
{
    ui::DayEntry out;
    out.kind = ui::EntryKind::Bother;
    out.site = ui::shown(e.payload.site);
    out.score = e.payload.score;
    return out;
}

ui::DayEntry entryOf(const Entry<SideEffect>& e)
{
    ui::DayEntry out;
    out.kind = ui::EntryKind::SkinAfter;
    out.site = ui::shown(e.payload.site);
    out.skin = ui::shown(e.payload.skin);
    out.note = text(e.payload.note);
    return out;
}

ui::DayEntry entryOf(const Entry<Weighing>& e)
{
    ui::DayEntry out;
    out.kind = ui::EntryKind::Weighing;
    out.site = ui::shown(e.payload.site);
    out.gain = e.payload.after.mg - e.payload.before.mg;
    out.minutes = e.payload.minutes;
    out.rate = protocol::mgPerMinute(e.payload);
    return out;
}

/// Every entry of that kind and day.
template <class P, class Then>
void add(const std::vector<Entry<P>>& entries, LocalDate day, QList<ui::DayEntry>& out, const Then& then)
{
    for (const auto& e : entries) {
        if (e.happened.date != day)
            continue;
        ui::DayEntry entry = entryOf(e);
        entry.id = text(e.id);
        then(e.payload, entry);
        out << entry;
    }
}

} // namespace

DiaryModel::DiaryModel(Store& store) : m_store(store) { connect(&store, &Store::changed, this, &DiaryModel::changed); }

QList<ui::DiarySite::Value> DiaryModel::sites() const
{
    QList<ui::DiarySite::Value> out;
    for (const auto& s : m_store.diary().sitesInUse())
        out << ui::shown(s.site);
    return out;
}

int DiaryModel::daysKept() const
{
    std::optional<LocalDate> out;
    earliest(m_store.diary().checkIns, out);
    earliest(m_store.diary().sessions, out);
    return out ? m_store.situation().today - *out + 1 : 0;
}

ui::SiteAnswer DiaryModel::working(ui::DiarySite::Value site) const
{
    for (const auto& s : m_store.situation().sites)
        if (ui::shown(s.site) == site) {
            const auto answer = situation::workingAt(m_store.diary(), s);
            return {true, answer.answer == situation::Working::Yes, words::workingLine(answer),
                    words::workingDetail(answer, s.forecast, m_store.situation().today)};
        }
    return {};
}

ui::SiteForecast DiaryModel::forecast(ui::DiarySite::Value site) const
{
    ui::SiteForecast out;
    for (const auto& s : m_store.situation().sites) {
        if (ui::shown(s.site) != site)
            continue;
        for (const auto& day : outlook::daysToTell(s.forecast))
            out.next << ui::NextDay{words::chanceBy(day.date, m_store.situation().today, day.begun),
                                    outlook::dotsOf(outlook::oddsOf(day.begun))};
        const auto score = outlook::scoreOf(m_store.diary(), s.site);
        out.score = words::scoreLines(score);
        out.verdict = words::scoreVerdict(score);
        out.shorter = words::shorterLines(s.forecast, m_store.situation().today);
    }
    return out;
}

ui::SiteComparison DiaryModel::comparison(ui::DiarySite::Value site) const
{
    ui::SiteComparison out;
    for (const auto& s : m_store.situation().sites) {
        if (ui::shown(s.site) != site)
            continue;
        out.goesOn = s.comparison && !s.comparison->ended;
        out.offered = !situation::comparisonBar(m_store.diary(), s);
        if (s.comparison)
            out.lines = out.goesOn ? words::comparisonLines(*s.comparison, s.treatedAs)
                                   : words::comparisonAnswer(*s.comparison, m_store.situation().today);
        if (out.offered)
            out.about = words::aboutComparison(s.treatedAs);
    }
    return out;
}

bool DiaryModel::beginComparison(ui::DiarySite::Value site)
{
    const auto where = ui::core(site);
    if (!where || !comparison(site).offered)
        return false;
    const int seed = QRandomGenerator::system()->bounded(std::numeric_limits<int>::max());
    return m_store.append(Comparison{*where, true, situation::kShorterOffered, seed}).has_value();
}

bool DiaryModel::leaveComparison(ui::DiarySite::Value site)
{
    const auto where = ui::core(site);
    return where && comparison(site).goesOn &&
           m_store.append(Comparison{*where, false, situation::kShorterOffered, 0}).has_value();
}

bool DiaryModel::tells(int checkIns) { return checkIns >= situation::kCheckInsThatTell; }

ui::NotedLevel DiaryModel::noted(ui::DiarySite::Value site, int day) const
{
    const auto where = ui::core(site);
    const auto* e = where ? m_store.diary().checkInOn(*where, LocalDate(day)) : nullptr;
    if (e == nullptr)
        return {};
    return {true, ui::shown(e->payload.level), ui::shown(e->payload.with), e->corrected};
}

/// Against healthy adults: not for a child, nor where height and weight are not known.
ui::SweatJudged::Value DiaryModel::judged(const Weighing& w) const
{
    const auto& person = m_store.diary().person;
    if (m_store.situation().age != AgeGroup::Adult || !person || !person->height || !person->weight)
        return ui::SweatJudged::NotJudged;
    const auto body = protocol::bodySurface(*person->height, *person->weight);
    const auto rate = body ? protocol::sweatRate(w, body->cautious()) : Result<protocol::SweatRate>(body.error());
    return !rate ? ui::SweatJudged::NotJudged : rate->above ? ui::SweatJudged::Above : ui::SweatJudged::Usual;
}

QList<ui::DayEntry> DiaryModel::others(int day) const
{
    const LocalDate when(day);
    const diary::Diary& diary = m_store.diary();
    const auto asItIs = [](const auto&, ui::DayEntry&) {};
    QList<ui::DayEntry> out;
    add(diary.sessions, when, out, asItIs);
    add(diary.scores, when, out, asItIs);
    add(diary.skin, when, out, asItIs);
    add(diary.weighings, when, out, [this](const Weighing& w, ui::DayEntry& e) { e.judged = judged(w); });
    return out;
}

bool DiaryModel::addHdss(ui::DiarySite::Value site, int score)
{
    const auto where = ui::core(site);
    return where && m_store.append(Hdss{*where, score}).has_value();
}

bool DiaryModel::addSideEffect(ui::DiarySite::Value site, const QList<ui::SkinFinding::Value>& skin,
                               const QString& note)
{
    const auto where = ui::core(site);
    return where && m_store.append(SideEffect{*where, ui::coreSet(skin), note.toStdString()}).has_value();
}

bool DiaryModel::addWeighing(ui::DiarySite::Value site, double beforeMg, double afterMg, double minutes)
{
    const auto where = ui::core(site);
    return where && m_store.append(Weighing{*where, {beforeMg}, {afterMg}, minutes}).has_value();
}

QList<ui::OtherLine> DiaryModel::otherTreatments() const
{
    auto all = m_store.diary().otherTreatments;
    std::ranges::stable_sort(all, std::ranges::greater(), [](const auto& e) { return e.payload.from; });
    QList<ui::OtherLine> out;
    for (const auto& e : all)
        out << ui::OtherLine{text(e.id), words::otherTreatmentLine(e.payload)};
    return out;
}

bool DiaryModel::addOther(ui::OtherKind::Value what, const QString& name, const QList<ui::DiarySite::Value>& sites,
                          int from, int until)
{
    const auto kind = ui::core(what);
    const auto last = until == 0 ? std::nullopt : std::optional(LocalDate(until));
    if (!kind || (last && *last < LocalDate(from)))
        return false;
    return m_store
        .append(OtherTreatment{*kind, name.trimmed().toStdString(), ui::coreSet(sites), LocalDate(from), last})
        .has_value();
}

QList<ui::Site::Value> DiaryModel::treated() const
{
    QList<ui::Site::Value> out;
    for (const auto& s : m_store.situation().sites)
        if (!out.contains(ui::shown(s.treatedAs)))
            out << ui::shown(s.treatedAs);
    return out;
}

ui::Waveform::Value DiaryModel::lastWaveform(ui::Site::Value site) const
{
    return ui::shown(protocol::choiceFor(m_store.diary(), ui::core(site).value_or(Site::Hands)).waveform);
}

bool DiaryModel::addSession(ui::Site::Value site, int day, ui::Waveform::Value waveform, bool completed, int comfort,
                            const QList<ui::SkinFinding::Value>& skin, const QString& note, const QString& corrects)
{
    constexpr MinuteOfDay kEvening{20 * 60}; // nobody is asked for the hour
    const auto where = ui::core(site);
    const auto with = ui::core(waveform);
    const LocalDate date(day);
    if (!where || !with || date > m_store.situation().today)
        return false;
    Session s;
    LocalTime when = date == m_store.situation().today ? m_store.now() : LocalTime{date, kEvening};
    if (corrects.isEmpty()) {
        s.machine = m_store.diary().machine ? m_store.diary().machine->name : std::string();
    } else {
        const auto& all = m_store.diary().sessions;
        const auto found = std::find_if(all.begin(), all.end(), [&](const auto& e) { return text(e.id) == corrects; });
        if (found == all.end())
            return false;
        s = found->payload;
        if (found->happened.date == date)
            when = found->happened;
    }
    s.site = *where;
    s.waveform = *with;
    s.completed = completed;
    s.comfort = ui::core(static_cast<ui::Comfort::Value>(comfort));
    s.skin = ui::coreSet(skin);
    s.note = note.toStdString();
    return m_store.append(s, when, corrects.toStdString()).has_value();
}

bool DiaryModel::withdraw(const QString& id) { return m_store.retract(id.toStdString(), "withdrawn"); }

} // namespace firstdew::viewmodels
