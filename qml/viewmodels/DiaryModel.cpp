#include "DiaryModel.h"

#include "protocol/Area.h"
#include "protocol/Sweat.h"
#include "situation/Sites.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

std::optional<LocalDate> dateOf(const QString& iso) { return LocalDate::parse(iso.toStdString()); }

template <class P>
void earliest(const Record& record, std::optional<LocalDate>& out)
{
    const auto& entries = record.all<P>();
    if (!entries.empty() && (!out || entries.front().happened.date < *out))
        out = entries.front().happened.date;
}

QVariantMap bathMap(const Entry<Session>& e, LocalDate from)
{
    const Session& s = e.payload;
    return {{"id", text(e.id)},
            {"day", e.happened.date - from},
            {"date", text(e.happened.date)},
            {"site", token(s.site)},
            {"waveform", token(s.waveform)},
            {"completed", s.completed},
            {"comfortable", s.comfortable ? s.comfortable->mA : -1},
            {"peak", s.peak ? s.peak->mA : -1},
            {"comfort", s.comfort ? token(*s.comfort) : QString()},
            {"skin", tokens(s.skin)},
            {"note", text(s.note)}};
}

/// usual or above, against healthy adults; empty for a child, and where height and weight are not known.
QString judgement(const Weighing& w, const Entry<Person>* person)
{
    if (Store::instance()->situation().age != AgeGroup::Adult || person == nullptr || !person->payload.height ||
        !person->payload.weight)
        return {};
    const auto body = protocol::bodySurface(*person->payload.height, *person->payload.weight);
    const auto rate = body ? protocol::sweatRate(w, body->cautious()) : Result<protocol::SweatRate>(body.error());
    return !rate ? QString() : rate->above ? QStringLiteral("above") : QStringLiteral("usual");
}

} // namespace

DiaryModel::DiaryModel(QObject* parent) : QObject(parent)
{
    connect(Store::instance(), &Store::changed, this, &DiaryModel::changed);
}

QStringList DiaryModel::sites() const
{
    QStringList out;
    for (const auto& s : situation::sitesInUse(Store::instance()->record()))
        out << token(s.site);
    return out;
}

int DiaryModel::daysKept() const
{
    std::optional<LocalDate> out;
    earliest<CheckIn>(Store::instance()->record(), out);
    earliest<Session>(Store::instance()->record(), out);
    return out ? Store::instance()->situation().today - *out + 1 : 0;
}

QVariantList DiaryModel::levels(const QString& site, const QString& from, const QString& to) const
{
    const auto where = valueOf<DiarySite>(site);
    const auto first = dateOf(from);
    const auto last = dateOf(to);
    QVariantList out;
    if (!where || !first || !last)
        return out;
    for (const auto& r : situation::dayReports(Store::instance()->record(), *where, *last))
        if (r.date >= *first)
            out << QVariantMap{{"day", r.date - *first},
                               {"date", text(r.date)},
                               {"level", static_cast<int>(r.level)},
                               {"with", tokens(r.with)}};
    return out;
}

QVariantList DiaryModel::baths(const QString& site, const QString& from, const QString& to) const
{
    const auto where = valueOf<DiarySite>(site);
    const auto first = dateOf(from);
    const auto last = dateOf(to);
    QVariantList out;
    if (!where || !first || !last)
        return out;
    for (const auto& e : Store::instance()->record().all<Session>())
        if (treats(e.payload.site).contains(*where) && e.happened.date >= *first && e.happened.date <= *last)
            out << bathMap(e, *first);
    return out;
}

QVariantList DiaryModel::day(const QString& date) const
{
    const auto when = dateOf(date);
    QVariantList out;
    if (!when)
        return out;
    const Record& record = Store::instance()->record();
    for (const auto& e : record.all<CheckIn>())
        if (e.happened.date == *when)
            out << QVariantMap{{"id", text(e.id)},
                               {"kind", "check-in"},
                               {"site", token(e.payload.site)},
                               {"level", token(e.payload.level)},
                               {"with", tokens(e.payload.with)},
                               {"corrected", e.corrected}};
    for (const auto& e : record.all<Session>())
        if (e.happened.date == *when) {
            auto map = bathMap(e, *when);
            map["kind"] = "session";
            out << map;
        }
    for (const auto& e : record.all<Hdss>())
        if (e.happened.date == *when)
            out << QVariantMap{
                {"id", text(e.id)}, {"kind", "hdss"}, {"site", token(e.payload.site)}, {"score", e.payload.score}};
    for (const auto& e : record.all<SideEffect>())
        if (e.happened.date == *when)
            out << QVariantMap{{"id", text(e.id)},
                               {"kind", "side-effect"},
                               {"site", token(e.payload.site)},
                               {"skin", tokens(e.payload.skin)},
                               {"note", text(e.payload.note)}};
    const auto* person = record.latest<Person>();
    for (const auto& e : record.all<Weighing>())
        if (e.happened.date == *when)
            out << QVariantMap{{"id", text(e.id)},
                               {"kind", "weighing"},
                               {"site", token(e.payload.site)},
                               {"gain", e.payload.after.mg - e.payload.before.mg},
                               {"minutes", e.payload.minutes},
                               {"rate", protocol::mgPerMinute(e.payload)},
                               {"judged", judgement(e.payload, person)}};
    return out;
}

bool DiaryModel::addHdss(const QString& site, int score)
{
    const auto where = valueOf<DiarySite>(site);
    return where && Store::instance()->append(Hdss{*where, score}).has_value();
}

bool DiaryModel::addSideEffect(const QString& site, const QStringList& skin, const QString& note)
{
    const auto where = valueOf<DiarySite>(site);
    return where &&
           Store::instance()->append(SideEffect{*where, setOf<SkinFinding>(skin), note.toStdString()}).has_value();
}

bool DiaryModel::addWeighing(const QString& site, double beforeMg, double afterMg, double minutes)
{
    const auto where = valueOf<DiarySite>(site);
    return where && Store::instance()->append(Weighing{*where, {beforeMg}, {afterMg}, minutes}).has_value();
}

bool DiaryModel::withdraw(const QString& id) { return Store::instance()->retract(id.toStdString(), "withdrawn"); }

QString DiaryModel::plusDays(const QString& date, int days) const
{
    const auto when = dateOf(date);
    return when ? text(*when + days) : QString();
}

} // namespace firstdew::viewmodels
