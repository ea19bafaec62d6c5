#include "Reminding.h"

#include "situation/Reminders.h"
#include "words/Sentences.h"

namespace firstdew::app {

Reminding::Reminding(viewmodels::Store& store, ports::Notifier& notifier) : m_store(store), m_notifier(notifier)
{
    m_minute.setInterval(60'000);
    connect(&m_minute, &QTimer::timeout, this, &Reminding::look);
    connect(&store, &viewmodels::Store::changed, this, &Reminding::look);
    m_minute.start();
    look();
}

void Reminding::look()
{
    std::vector<ports::Notice> notices;
    for (const auto& r : situation::dueReminders(m_store.record(), m_store.now()))
        notices.push_back({r.key, words::reminderTitle(r).toStdString(), words::reminderText(r).toStdString()});
    m_notifier.show(notices);
}

} // namespace firstdew::app
