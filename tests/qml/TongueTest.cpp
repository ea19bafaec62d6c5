#include "Led.h"

using namespace firstdew;
using namespace firstdew::tests;

TEST_CASE("Both hands under is open only where a voice speaks the person's language, and the page says why it is not")
{
    Led s;
    s.askToBegin(ui::Site::Hands, ui::WayOfWorking::Helper, true);
    s.bath.leave();
    s.bath.chooseSite(ui::Site::Hands);
    const auto under = [&] { return s.bath.ways().back(); };
    REQUIRE(under().way == ui::WayOfWorking::HandsUnder);
    CHECK(under().allowed);
    s.bath.chooseWay(ui::WayOfWorking::HandsUnder);
    CHECK(s.bath.way() == ui::WayOfWorking::HandsUnder);
    CHECK(s.bath.tongue() == ui::Tongue::Recorded);

    s.voice.nowSays(ports::Says::English); // another language was chosen
    CHECK_FALSE(under().allowed);
    CHECK(under().hint.contains("no voice here is known to speak your language"));
    CHECK(s.bath.way() == ui::WayOfWorking::Helper);
    s.bath.chooseWay(ui::WayOfWorking::HandsUnder);
    CHECK(s.bath.way() == ui::WayOfWorking::Helper);
    CHECK(s.bath.tongue() == ui::Tongue::Foreign);

    s.voice.nowSays(ports::Says::Made); // the device's voice has spoken every prompt
    CHECK(under().allowed);
    CHECK(s.bath.tongue() == ui::Tongue::Device);
}

TEST_CASE("A session with both hands under does not begin once its voice is gone")
{
    Led s;
    s.voice.ready = false; // held back until the very last page
    s.askToBegin(ui::Site::Hands, ui::WayOfWorking::HandsUnder, true);
    REQUIRE(s.bath.page() == ui::BathPage::Prepare);
    s.voice.ready = true;
    s.voice.nowSays(ports::Says::English); // the system emptied the folder of its clips
    s.bath.start();
    CHECK(s.bath.page() == ui::BathPage::Prepare);
    CHECK(s.bath.refusal().contains("no voice here is known to speak your language"));
    s.voice.nowSays(ports::Says::Made);
    s.bath.start();
    CHECK(s.bath.page() == ui::BathPage::Run);
}
