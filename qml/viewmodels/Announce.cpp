#include "Announce.h"

#include "BathModel.h"
#include "Store.h"
#include "Tokens.h"
#include "words/Sentences.h"

namespace firstdew::viewmodels {

using Urgency = ports::Announcer::Urgency;

Announce::Announce(Store& store, BathModel& bath)
{
    connect(&store, &Store::saved, this, &Announce::value);
    connect(&store, &Store::failed, this, [this, &store] { refused(store.errorText()); });
    connect(&bath, &BathModel::refusalChanged, this, [this, &bath] { refused(bath.refusal()); });
}

void Announce::tell(const QString& text, Urgency urgency)
{
    if (!text.isEmpty() && m_announcer->listens())
        m_announcer->announce(text.toStdString(), urgency);
}

void Announce::value(const QString& text) { tell(text, Urgency::InTurn); }
void Announce::refused(const QString& why) { tell(why, Urgency::AtOnce); }

void Announce::place(ui::Place::Value place)
{
    tell(words::placeName(text(tokenOf(kPlaceTokens, place))), Urgency::InTurn);
}

void Announce::page(const QString& title)
{
    if (!title.isEmpty() && m_announcer->listens())
        m_announcer->page(title.toStdString());
}

} // namespace firstdew::viewmodels
