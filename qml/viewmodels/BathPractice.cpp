#include "BathModel.h"

#include "protocol/Practice.h"
#include "words/BathWords.h"

// Practice: the led session with the machine off.
namespace firstdew::viewmodels {

bool BathModel::canPractise() const
{
    return m_store.diary().machine.has_value() && m_choice.limit().allowed && m_choice.script();
}

QString BathModel::practiceBar() const
{
    const auto may =
        bath::mayPrepare(m_store.diary(), m_choice.site(), m_choice.waveform(), m_choice.way(), m_choice.phone());
    return may ? QString() : words::practiceBar(may.error());
}

QString BathModel::practiceLength() const
{
    return m_bath.practising() ? words::practiceLength(*m_bath.state()) : QString();
}

int BathModel::practiceSeconds() const { return protocol::kPracticeStep.s; }

void BathModel::practise()
{
    if (m_bath.state() || !canPractise())
        return;
    setTold(false);
    m_practice = true;
    toPage(ui::BathPage::PracticeStart);
}

void BathModel::beginPractice()
{
    const auto script = m_choice.script();
    if (!m_practice || !script)
        return;
    m_bath.end();
    (void)m_cues.prepare(); // without a voice the pages are there to read
    m_bath.practise(*script, m_choice.advice().target);
}

void BathModel::leavePractice()
{
    if (!m_practice)
        return;
    m_bath.end();
    m_practice = false;
    toPage(ui::BathPage::Choose);
}

} // namespace firstdew::viewmodels
