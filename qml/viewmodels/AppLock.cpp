#include "AppLock.h"

#include "BathModel.h"
#include "Store.h"
#include "diary/AppLock.h"

namespace firstdew::viewmodels {

using situation::Guard;
using Verdict = ports::OwnerCheck::Verdict;

AppLock::AppLock(Store& store, BathModel& bath) : m_store(store), m_bath(bath)
{
    m_away.setSingleShot(true);
    m_away.setInterval(static_cast<int>(situation::kAwayMs));
    connect(&m_away, &QTimer::timeout, this, &AppLock::review); // a window that is left may still be seen
    connect(&store, &Store::changed, this, &AppLock::review);
    connect(&bath, &BathModel::changed, this, &AppLock::review);
    review();
}

void AppLock::use(ports::OwnerCheck& check)
{
    m_check = &check;
    review();
}

void AppLock::setInFront(bool inFront)
{
    if (inFront == m_inFront)
        return;
    m_inFront = inFront;
    const auto now = m_store.clock().instant();
    m_state = inFront ? situation::afterReturn(m_state, now) : situation::afterLeaving(m_state, now);
    if (inFront) {
        m_away.stop();
        m_unable = false; // a lock may have been set up meanwhile
    } else {
        m_away.start();
    }
    review();
}

void AppLock::review()
{
    m_on = m_store.lockWanted();
    const auto page = m_bath.page();
    const bool session = !m_bath.practice() && (m_bath.busy() || page == ui::BathPage::After);
    const situation::LockFacts facts{m_on, m_on && !m_unable && m_check->available(), session};
    const Guard before = std::exchange(m_guard, situation::guard(m_state, facts, m_store.clock().instant()));
    if (before == Guard::Locked && m_guard != Guard::Locked && !m_switching)
        quiet();
    if (m_guard != before && (m_guard == Guard::Locked || m_guard == Guard::SessionOnly)) {
        m_switching = false;
        quiet();
    }
    emit changed();
}

void AppLock::quiet()
{
    m_check->drop();
    m_asking = m_prompted = m_through = m_wrong = false;
    m_prompt.clear();
    m_told.clear();
}

void AppLock::ask(const QString& why)
{
    m_why = why;
    m_asking = true;
    m_prompted = m_through = false;
    m_check->ask(why.toStdString(), {[this](const std::string& words, bool hidden) {
                                         m_prompted = m_through = true;
                                         m_prompt = text(words).trimmed();
                                         m_hidden = hidden;
                                         emit changed();
                                     },
                                     [this](const std::string& words) {
                                         m_told = text(words).trimmed();
                                         emit changed();
                                     },
                                     [this](Verdict verdict) { over(verdict); }});
    emit changed();
}

void AppLock::answer(const QString& secret)
{
    if (!m_prompted)
        return;
    m_prompted = m_wrong = false;
    m_told.clear();
    QByteArray bytes = secret.toUtf8();
    m_check->reply(bytes.toStdString());
    bytes.fill('\0');
    emit changed();
}

void AppLock::over(Verdict verdict)
{
    const bool through = m_through;
    const QString told = m_told;
    m_asking = m_prompted = false;
    m_wrong = verdict == Verdict::Refused;
    if (m_wrong && through) { // the field is there again at once, with what the system said
        ask(m_why);
        m_told = told;
        emit changed();
        return;
    }
    if (verdict == Verdict::Confirmed) {
        m_state = situation::afterConfirming(m_state, m_store.clock().instant());
        if (std::exchange(m_switching, false))
            flip();
    } else if (verdict == Verdict::Unable) {
        m_unable = true;
        m_failed = std::exchange(m_switching, false);
    } else if (verdict == Verdict::Dropped) {
        m_switching = false;
    }
    review();
}

void AppLock::change(const QString& why)
{
    m_failed = false;
    if (!m_check->available()) {
        if (m_on)
            flip();
        return;
    }
    m_switching = true;
    ask(why);
}

void AppLock::leaveAsItIs()
{
    m_switching = false;
    quiet();
    emit changed();
}

void AppLock::flip() { m_store.recordForAll(diary::appLockPreference(!m_on)); }

} // namespace firstdew::viewmodels
