#include "diary/Notes.h"
#include "facts/Record.h"

namespace firstdew::diary {

Diary readDiary(const Record& record, LocalDate today)
{
    Diary diary;
    diary.today = today;
    Notes notes(diary);
    forEachPayload([&](auto kind) {
        using P = typename decltype(kind)::type;
        const LocalDate last = kHappens<P> ? today : kEndOfTime;
        for (const auto& entry : record.all<P>())
            if (entry.happened.date <= last)
                notes.note(entry);
    });
    for (const auto& e : record.all<Screening>())
        if (e.happened.date > today)
            notes.answer(e, true);
    for (const auto& e : record.all<Session>())
        if (e.happened.date > today)
            diary.sessionsAhead.push_back(e);
    for (const auto& e : record.all<SideEffect>())
        if (e.happened.date > today)
            diary.skinAhead.push_back(e);
    return diary;
}

Diary readDiary(std::span<const Fact> facts, std::string_view person, LocalDate today)
{
    return readDiary(recordOf(facts, person), today);
}

} // namespace firstdew::diary
