<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar">
<context>
    <name>About</name>
    <message>
        <source>About and cautions</source>
        <translation>حول التطبيق والتنبيهات</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>الخصوصية</translation>
    </message>
    <message>
        <source>No account, no network. Nothing leaves this phone unless you share it.</source>
        <translation>لا حساب ولا شبكة. لا يغادر شيء هذا الهاتف إلا إذا شاركته أنت.</translation>
    </message>
    <message>
        <source>Firstdew %1</source>
        <translation>Firstdew %1</translation>
    </message>
    <message>
        <source>Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.</source>
        <translation>برنامج حر برخصة Apache 2.0. الخطان Inter وNoto Sans Arabic برخصة SIL Open Font 1.1.</translation>
    </message>
</context>
<context>
    <name>ActionButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>غير ممكن بعد</translation>
    </message>
</context>
<context>
    <name>AsTable</name>
    <message>
        <source>As a table</source>
        <translation>كجدول</translation>
    </message>
</context>
<context>
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>أيام الغياب</translation>
    </message>
    <message>
        <source>From</source>
        <translation>من</translation>
    </message>
    <message>
        <source>To</source>
        <translation>إلى</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>إضافة</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 إلى %2</translation>
    </message>
    <message>
        <source>Remove %1 to %2</source>
        <translation>حذف %1 إلى %2</translation>
    </message>
    <message>
        <source>No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.</source>
        <translation>لا تُخطط أي جلسة في هذه الأيام؛ وتُعدَّل الدورة حولها. وإذا حان موعد التجديد خلالها، يُعرض عليك قبل السفر.</translation>
    </message>
    <message>
        <source>Taking the kit along</source>
        <translation>اصطحاب الأدوات</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
</context>
<context>
    <name>Bath</name>
    <message>
        <source>Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.</source>
        <translation>قبل الجلسة يجب أن يعرف Firstdew أين تُعالج وبأي جهاز، وإجاباتك عن أسئلة الصحة.</translation>
    </message>
</context>
<context>
    <name>BathAfter</name>
    <message>
        <source>Done</source>
        <translation>تم</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>توقفت الجلسة</translation>
    </message>
    <message>
        <source>The batteries are near their end.</source>
        <translation>البطاريات على وشك النفاد.</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>كيف كان الإحساس؟</translation>
    </message>
    <message>
        <source>Highest comfortable reading</source>
        <translation>أعلى قراءة مريحة</translation>
    </message>
    <message>
        <source>Skin now</source>
        <translation>الجلد الآن</translation>
    </message>
    <message>
        <source>Keep in the diary</source>
        <translation>الحفظ في اليوميات</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then lift out.</source>
        <translation>التيار عند الصفر، الجهاز مطفأ، ثم أخرِج اليدين أو القدمين.</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then take the pads off.</source>
        <translation>اخفض التيار إلى الصفر، وأطفئ الجهاز، ثم انزع اللبّادتين.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit completely.</source>
        <translation>جفف جلدك والأدوات تمامًا.</translation>
    </message>
    <message>
        <source>Take the batteries out.</source>
        <translation>أخرِج البطاريات.</translation>
    </message>
    <message>
        <source>Look at the skin tomorrow.</source>
        <translation>انظر إلى الجلد غدًا.</translation>
    </message>
    <message>
        <source>Not entered</source>
        <translation>لم تُدخَل</translation>
    </message>
    <message>
        <source>Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.</source>
        <translation>يهدأ الجلد المتهيّج بالراحة وبمرطّب بسيط. قد يفيد كريم هيدروكورتيزون خفيف: اسأل الصيدلي.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>لا جلسة أخرى هناك حتى يفحص الموضعَ مختص صحي (طبيب أو ممرض). إن كانت الإصابة مؤلمة أو كبيرة فاطلب المساعدة.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>ملاحظة (اختيارية)</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>انظر إلى جلدك وقل كيف حاله.</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>هل علّمك أحد هذه الجلسة؟</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>سجّل ذلك</translation>
    </message>
    <message>
        <source>The current would not rise</source>
        <translation>لم يرتفع التيار</translation>
    </message>
</context>
<context>
    <name>BathAsLast</name>
    <message>
        <source>Next: %1</source>
        <translation>التالي: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>تغيير</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>البالغ بجانب الطفل: %1</translation>
    </message>
    <message>
        <source>True</source>
        <translation>صحيح</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>ليس تمامًا</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>جهّز ثم شغّل</translation>
    </message>
    <message>
        <source>The batteries are near their end. Have new ones at hand.</source>
        <translation>أوشكت البطاريات على النفاد. اجعل بدائل قريبة.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>متابعة</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>يكفي اليوم</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>تدرّب بلا تيار</translation>
    </message>
</context>
<context>
    <name>BathBlocked</name>
    <message>
        <source>No session now</source>
        <translation>لا جلسة الآن</translation>
    </message>
    <message>
        <source>Ask a clinician first</source>
        <translation>اسأل طبيبًا أولًا</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has cleared it:</source>
        <translation>بسبب ما يلي لا يجوز إجراء أي جلسة حتى يسمح بها طبيب:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>لا تتابع إلا بإذن طبيب في ما يلي:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>الآمن الآن: اترك الجهاز مطفأ. لا تخسر شيئًا بالانتظار.</translation>
    </message>
    <message>
        <source>A clinician has cleared it</source>
        <translation>سمح به طبيب</translation>
    </message>
    <message>
        <source>Who cleared it</source>
        <translation>من سمح به</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>سجّل وتابع</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>فقط إذا وافق طبيب أو ممرض يعرف هذا الأمر ويعرف علاجك. يظهر الاسم في الملخص.</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>Who can tap the phone</source>
        <translation>من يستطيع لمس الهاتف</translation>
    </message>
    <message>
        <source>Which side first</source>
        <translation>أي جانب أولًا</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>الجانب الأيمن</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>الجانب الأيسر</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>البالغ بجانب الطفل: %1</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>متابعة</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>يكفي اليوم</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>تدرّب بلا تيار</translation>
    </message>
</context>
<context>
    <name>BathExits</name>
    <message>
        <source>It is unpleasant</source>
        <translation>إنه مزعج</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Stop: a tap anywhere</source>
        <translation>إيقاف: المس أي مكان</translation>
    </message>
    <message>
        <source>A tap anywhere stops.</source>
        <translation>لمسة في أي مكان توقف الجلسة.</translation>
    </message>
</context>
<context>
    <name>BathMeanwhile</name>
    <message>
        <source>Welcome back</source>
        <translation>مرحبًا بعودتك</translation>
    </message>
    <message>
        <source>The session was interrupted: %1. The current may still be flowing.</source>
        <translation>انقطعت الجلسة: %1. قد يكون التيار ما زال جاريًا.</translation>
    </message>
    <message>
        <source>What did the machine do meanwhile?</source>
        <translation>ماذا فعل الجهاز في هذه الأثناء؟</translation>
    </message>
    <message>
        <source>I switched it off</source>
        <translation>أطفأته</translation>
    </message>
    <message>
        <source>I took hands or feet out</source>
        <translation>أخرجت اليدين أو القدمين</translation>
    </message>
    <message>
        <source>I do not know</source>
        <translation>لا أعرف</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.</source>
        <translation>إن لم تكن متأكدًا: أطفئ الجهاز الآن. إن أُطفئ قبل أقل من عشر دقائق تستمر الجلسة؛ وإلا فإنها تبدأ من جديد أو تنتهي، ويبقى ما أنجزته محفوظًا.</translation>
    </message>
</context>
<context>
    <name>BathMeter</name>
    <message>
        <source>Aim %1</source>
        <translation>الهدف %1</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>الحد %1</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>المقياس: %1</translation>
    </message>
    <message>
        <source>Meter shows less</source>
        <translation>المقياس يشير إلى أقل</translation>
    </message>
    <message>
        <source>Enter the meter reading, now %1</source>
        <translation>أدخل قراءة المقياس، الآن %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>المقياس يشير إلى أكثر</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>قراءة المقياس بالمللي أمبير</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>حذف</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>إدخال</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Practice: enter any number</source>
        <translation>تدريب: أدخل أي رقم</translation>
    </message>
    <message>
        <source>Enter meter reading</source>
        <translation>أدخل قراءة العداد</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>إدخال قراءة المقياس</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>فوق الحد %1</translation>
    </message>
</context>
<context>
    <name>BathPracticeOver</name>
    <message>
        <source>That was practice</source>
        <translation>كان ذلك تدريبًا</translation>
    </message>
    <message>
        <source>Nothing of it was recorded.</source>
        <translation>لم يُسجَّل منه شيء.</translation>
    </message>
    <message>
        <source>After a real session you dry your skin and the kit, say how it felt, and look at your skin.</source>
        <translation>بعد جلسة حقيقية تجفف جلدك والأدوات، وتقول كيف كانت، وتنظر إلى جلدك.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>تدرّب مرة أخرى</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>اترك التدريب</translation>
    </message>
</context>
<context>
    <name>BathPracticeStart</name>
    <message>
        <source>Practice</source>
        <translation>تدريب</translation>
    </message>
    <message>
        <source>Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.</source>
        <translation>مرّ بجلسة كاملة والجهاز مطفأ: كل خطوة وكل صورة وكل كلام. لا يُسجَّل شيء.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثانية.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا ثانية واحدة.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا ثانيتين.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثوانٍ.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثانية.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثانية.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Begin practice</source>
        <translation>ابدأ التدريب</translation>
    </message>
    <message>
        <source>Leave the machine off the whole time.</source>
        <translation>أبقِ الجهاز مطفأً طوال الوقت.</translation>
    </message>
</context>
<context>
    <name>BathPrepare</name>
    <message>
        <source>Prepare: %1</source>
        <translation>التحضير: %1</translation>
    </message>
    <message>
        <source>About 12 hours ago</source>
        <translation>قبل نحو 12 ساعة</translation>
    </message>
    <message>
        <source>Within a few hours</source>
        <translation>في الساعات الأخيرة</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>قبل يومين</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>أمس</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>تحقق من علو الصوت</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>ابدأ</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Antiperspirant with aluminium there in the last 24 hours?</source>
        <translation>هل استخدمت هناك مضاد تعرّق بالألمنيوم في آخر 24 ساعة؟</translation>
    </message>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Shaved there in the last three days?</source>
        <translation>هل حلقت هناك في آخر ثلاثة أيام؟</translation>
    </message>
    <message>
        <source>Small cuts on the skin there?</source>
        <translation>هل توجد جروح صغيرة في الجلد هناك؟</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>The batteries are near their end. Have new ones at hand.</source>
        <translation>البطاريات توشك على النفاد. جهّز بطاريات جديدة.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>ارفع التيار واخفضه بجهاز التحكم عن بعد. ما دامت يداك في الماء يكفي لإيقاف الجلسة أي زر، أو لمسة في أي مكان من الشاشة بالمرفق أو الأنف. عند التبديل: المقياس عند الصفر، أخرِج يديك، جففهما، بدّل، ثم المس الشاشة. الهاتف ينتظرك. وهو لا يرى التيار: راقب المقياس بنفسك.</translation>
    </message>
    <message>
        <source>All checked</source>
        <translation>فُحص كل شيء</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 من %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>فحصته</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>يُسمع صوت خافت طوال الجلسة. إذا توقف، فاخفض التيار إلى الصفر وأطفئ الجهاز.</translation>
    </message>
</context>
<context>
    <name>BathRun</name>
    <message>
        <source>Next: %1</source>
        <translation>التالي: %1</translation>
    </message>
    <message>
        <source>Too high. Turn it down on the machine now.</source>
        <translation>مرتفع جدًا. اخفضه الآن من الجهاز.</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>إلى %1 أو أقل، ثم أدخل ما يظهره المقياس.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>لم يمكن حفظ الخطوات الأخيرة بعد. الجلسة مستمرة، وستتكرر محاولة الحفظ.</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>لا يمكن سماع Firstdew الآن. راقب الشاشة أو توقف.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>اخفض</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>ما زال %1</translation>
    </message>
    <message>
        <source>That was a slip: go on (%1)</source>
        <translation>كان ذلك سهوًا: تابع (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>أسئلة صحية</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>هل تغير شيء؟</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>منذ آخر جواب لك: حمل أو زرعات أو مرض أو جلد أو أدوية قلب أو أي شيء آخر في القائمة؟</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>هذا كل شيء</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>لم يتغير شيء</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>تغير شيء</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as it is today.</source>
        <translation>أجب عن كل سؤال بشأن الشخص المعالَج، كما هو حاله اليوم.</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>القائمة</translation>
    </message>
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>ما الأقرب إلى حالك في الأسبوع الماضي؟</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>أستطيع التعايش معه، ويعيقني أحيانًا</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>بالكاد أستطيع التعايش معه، ويعيقني كثيرًا</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>لا أستطيع التعايش معه، ويعيقني دائمًا</translation>
    </message>
    <message>
        <source>How much the sweating bothers you</source>
        <translation>كم يزعجك التعرّق</translation>
    </message>
    <message>
        <source>I hardly notice it, and it never gets in my way</source>
        <translation>بالكاد ألاحظه، ولا يعيقني أبدًا</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>الأقسام</translation>
    </message>
</context>
<context>
    <name>CareSheetPage</name>
    <message>
        <source>Care sheet</source>
        <translation>ورقة الرعاية</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>من %1، %2</translation>
    </message>
    <message>
        <source>Add a care sheet</source>
        <translation>قراءة ورقة رعاية</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>اعتمادها</translation>
    </message>
    <message>
        <source>Show as a code to scan</source>
        <translation>عرض كرمز للمسح</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>ورقة الرعاية كرمز QR</translation>
    </message>
    <message>
        <source>It holds the whole care sheet. Show it only to those who treat you.</source>
        <translation>يحوي ورقة الرعاية كلها. لا تعرضه إلا على من يعالجك.</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>تسري على: %1</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>لا تغيّر هذه الورقة شيئًا: لديك إياها بالفعل، أو تسري ورقة أحدث.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>تسمح بأكثر من الآن. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>أخبرني الطبيب المعالج أنه يُسمح بالمزيد من الآن فصاعدًا</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>ممن وصف لك العلاج: الرمز على ورقة أو على هاتف آخر، أو صورة له، أو ملف. لا يمكن لأي ورقة رعاية أن ترفع الحدود المعتادة.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>إيقاف الكاميرا</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>مسح الرمز</translation>
    </message>
    <message>
        <source>What the camera sees. Hold the code in the middle.</source>
        <translation>ما تراه الكاميرا. ضع الرمز في الوسط.</translation>
    </message>
    <message>
        <source>The camera cannot be used. Take a picture of the code and choose that.</source>
        <translation>لا يمكن استخدام الكاميرا. التقط صورة للرمز واخترها.</translation>
    </message>
</context>
<context>
    <name>CasePage</name>
    <message>
        <source>Name not given</source>
        <translation>لم يُذكر اسم</translation>
    </message>
    <message>
        <source>Choose somebody from the caseload.</source>
        <translation>اختر شخصًا من قائمة من تتابعهم.</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Name not given</source>
        <translation>لم يُذكر اسم</translation>
    </message>
</context>
<context>
    <name>CaseText</name>
    <message>
        <source>%1: blister or burn since %2</source>
        <translation>%1: بثرة أو حرق منذ %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1: إجابة صحية توقف الجلسات منذ %2</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1: توقف في الدورة الأولى يوم %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1: لم تنفع الدورة، آخر جلسة %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1: تأخر التجديد منذ %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>لا خبر منذ %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>الحال جيدة، آخر تدوين %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>هذا نوع آخر من الملفات أو نسخة احتياطية. إن كانت نسخة احتياطية فاكتب كلمة السر أدناه.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>كلمة السر لا تفتحه. اطلب الكلمة الصحيحة من صاحبه.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>لا يمكن قراءة هذا المجلد الآن. تأكد من وجوده أو اختر مجلدًا آخر.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>في هذا المجلد ملفات كثيرة جدًّا. ضع السجلات في مجلد خاص بها.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>الملف تالف أو وصل ناقصًا. اطلب من صاحبه أن يرسله مرة أخرى.</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>Make a care sheet</source>
        <translation>إعداد ورقة رعاية</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>مشاركة الملخص</translation>
    </message>
    <message>
        <source>The summary of %1</source>
        <translation>ملخص %1</translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message>
        <source>Caseload</source>
        <translation>من أتابعهم</translation>
    </message>
    <message>
        <source>Reading file %1 of %2</source>
        <translation>قراءة الملف %1 من %2</translation>
    </message>
    <message>
        <source>%1 of %2 need a call.</source>
        <translation>%1 من %2 بحاجة إلى اتصال.</translation>
    </message>
    <message>
        <source>All are doing well.</source>
        <translation>الجميع بحال جيدة.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>لا ملفات تعذرت قراءتها.</numerusform>
            <numerusform>تعذرت قراءة ملف واحد. انظر آخر القائمة.</numerusform>
            <numerusform>تعذرت قراءة ملفين. انظر آخر القائمة.</numerusform>
            <numerusform>تعذرت قراءة %n ملفات. انظر آخر القائمة.</numerusform>
            <numerusform>تعذرت قراءة %n ملفًّا. انظر آخر القائمة.</numerusform>
            <numerusform>تعذرت قراءة %n ملف. انظر آخر القائمة.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no records in these files.</source>
        <translation>لا سجلات في هذه الملفات.</translation>
    </message>
    <message>
        <source>Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.</source>
        <translation>اطلب ممن تعلّمهم سجلهم أو نسختهم الاحتياطية، وضع الملفات في مجلد واحد. تُقرأ هنا وتبقى كما هي.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>لم تُقرأ</translation>
    </message>
    <message>
        <source>Passphrase of the back-ups</source>
        <translation>كلمة سر النسخ</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>تُنسى عند إغلاق Firstdew.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>فتح بكلمة السر هذه</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>مكان السجلات</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>اختر المجلد</translation>
    </message>
    <message>
        <source>Add a file</source>
        <translation>إضافة ملف</translation>
    </message>
    <message>
        <source>Read the files again</source>
        <translation>قراءة الملفات من جديد</translation>
    </message>
    <message>
        <source>Read the files in %1</source>
        <translation>قراءة الملفات في %1</translation>
    </message>
    <message>
        <source>Make a care sheet</source>
        <translation>إعداد ورقة رعاية</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>اختر شخصًا من القائمة.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>لم يُذكر اسم</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>%1 اليوم؟</translation>
    </message>
</context>
<context>
    <name>CheckedIn</name>
    <message>
        <source>Undo</source>
        <translation>تراجع</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>تغيير</translation>
    </message>
</context>
<context>
    <name>ChoiceChip</name>
    <message>
        <source>Not possible yet</source>
        <translation>غير ممكن بعد</translation>
    </message>
</context>
<context>
    <name>CourseDates</name>
    <message>
        <source>%1, done</source>
        <translation>%1، تم</translation>
    </message>
    <message>
        <source>%1, planned. Tap to move it.</source>
        <translation>%1، مخطَّطة. انقر لنقلها.</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>نقل الجلسة %1</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>Sessions of this course</source>
        <translation>جلسات هذه الدورة</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>نقل</translation>
    </message>
    <message>
        <source>Ends by %1 at the latest, if it can. A missed session moves by itself and the rest is planned anew.</source>
        <translation>تنتهي إن أمكن قبل: %1. الجلسة الفائتة تنتقل تلقائيًا ويُعاد تخطيط الباقي.</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>البدء من جديد</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>اختيار</translation>
    </message>
    <message>
        <source>First session</source>
        <translation>أول جلسة</translation>
    </message>
    <message>
        <source>Days that suit you (none = any day)</source>
        <translation>أيام تناسبك (بلا اختيار = كل الأيام)</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>تخطيط الدورة</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>نقل الجلسة %1</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>اليوم الجديد</translation>
    </message>
    <message>
        <source>Plan a course</source>
        <translation>التخطيط لدورة علاج</translation>
    </message>
    <message>
        <source>Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.</source>
        <translation>أنت الآن تبقى جافًا بجلسات متفرقة. الدورة الكاملة للبداية، أو عندما يعود التعرق كاملًا.</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>عند تقارب الجلسات</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>متتابعة</translation>
    </message>
    <message>
        <source>A day between</source>
        <translation>بينها يوم</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>الرطوبة عبر الزمن، %1</translation>
    </message>
    <message>
        <source>Marks below show your sessions. Diamonds above: weighings, in mg a minute.</source>
        <translation>العلامات أسفل: جلساتك. المعينات أعلى: أوزان، بالملغ في الدقيقة.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>العلامات أسفل: جلساتك.</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>لا تسجيل في هذه المدة.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>لا تسجيل هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
            <numerusform>تسجيل واحد هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
            <numerusform>تسجيلان هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
            <numerusform>%n تسجيلات هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
            <numerusform>%n تسجيلًا هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
            <numerusform>%n تسجيل هنا. بعد أسبوعين يبدأ الخط يبيّن كم تبقى جافًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>المعيّنات في الأعلى: أوزان، بالملغم في الدقيقة.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>قراءات المقياس في الجلسات، %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>النقاط: أعلى قراءة مريحة في كل جلسة، بالمللي أمبير؛ والحلقات حيث كان مزعجًا أو مؤلمًا.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>صُحِّح؛ ويُحفظ القيد الأول بجانبه.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>اكتمل، %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>مريح عند %1</translation>
    </message>
    <message>
        <source>Bother score %1 of 4</source>
        <translation>الإزعاج %1 من 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>الجلد: %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>إبقاء</translation>
    </message>
    <message>
        <source>Weighing: %1 mg in %2 minutes, %3 mg a minute</source>
        <translation>الوزن: %1 ملغ في %2 دقيقة، %3 ملغ في الدقيقة</translation>
    </message>
    <message>
        <source>More than the usual upper limit of healthy people.</source>
        <translation>أكثر من الحد الأعلى المعتاد لدى الأصحاء.</translation>
    </message>
    <message>
        <source>Within the usual range of healthy people.</source>
        <translation>ضمن المعتاد لدى الأصحاء.</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>اليوم السابق</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>اليوم التالي</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>لا شيء هنا بعد</translation>
    </message>
    <message>
        <source>What you note of a day stands here.</source>
        <translation>هنا يظهر ما تدوّنه عن اليوم.</translation>
    </message>
    <message>
        <source>Stopped early, %1</source>
        <translation>أُوقفت مبكرًا، %1</translation>
    </message>
    <message>
        <source>Correct this session</source>
        <translation>تصحيح هذه الجلسة</translation>
    </message>
    <message>
        <source>Delete this entry</source>
        <translation>حذف هذا التسجيل</translation>
    </message>
    <message>
        <source>Delete this entry?</source>
        <translation>حذف هذا التسجيل؟</translation>
    </message>
    <message>
        <source>It no longer counts. The original stays in your history.</source>
        <translation>لن يُحسب بعد الآن. ويبقى الأصل في سجلك.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>حذف</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Done</source>
        <translation>تم</translation>
    </message>
</context>
<context>
    <name>DaySheetPick</name>
    <message>
        <source>The month before</source>
        <translation>الشهر السابق</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>الشهر التالي</translation>
    </message>
</context>
<context>
    <name>DaysAround</name>
    <message>
        <source>The next fourteen days</source>
        <translation>الأيام الأربعة عشر القادمة</translation>
    </message>
    <message>
        <source>The last seven days</source>
        <translation>الأيام السبعة الماضية</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1، للإكمال</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>أجّلته إلى هذا المساء. سيأتي تذكير.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>ابدأ الآن</translation>
    </message>
    <message>
        <source>This evening</source>
        <translation>هذا المساء</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>غدًا</translation>
    </message>
    <message>
        <source>Not this time</source>
        <translation>ليس هذه المرة</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>لماذا؟</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>أجريت واحدة</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>More</source>
        <translation>المزيد</translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Month</source>
        <translation>شهر</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>ربع سنة</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>سنة</translation>
    </message>
    <message>
        <source>All</source>
        <translation>الكل</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>لا شيء هنا بعد</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>كم يزعجك</translation>
    </message>
    <message>
        <source>Skin after a session</source>
        <translation>الجلد بعد الجلسة</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>الوزن</translation>
    </message>
    <message>
        <source>Summary for your prescriber</source>
        <translation>ملخص لطبيبك</translation>
    </message>
    <message>
        <source>Filter: on</source>
        <translation>التصفية: مفعّلة</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>تصفية</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>أقدم</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 إلى %2</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>أحدث</translation>
    </message>
    <message>
        <source>See and note more</source>
        <translation>عرض وتدوين المزيد</translation>
    </message>
    <message>
        <source>Look at single days</source>
        <translation>عرض الأيام يومًا بيوم</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>ما يُعرض</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>كل المواضع</translation>
    </message>
    <message>
        <source>Sessions and readings</source>
        <translation>الجلسات والقراءات</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>ظاهرة</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>مخفية</translation>
    </message>
    <message>
        <source>Leave out days with</source>
        <translation>استبعاد الأيام التي فيها</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>تم</translation>
    </message>
    <message>
        <source>Left out: days with %1</source>
        <translation>مستثناة: أيام فيها %1</translation>
    </message>
    <message>
        <source>Send to your prescriber</source>
        <translation>أرسله إلى طبيبك</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>علاجات أخرى</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>كل تسجيل في «اليوم» يرسم هنا نقطة. بعد أسبوعين ترى كم تبقى جافًّا وهل ينفع العلاج.</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>Correct this session</source>
        <translation>تصحيح هذه الجلسة</translation>
    </message>
    <message>
        <source>A session I did</source>
        <translation>جلسة أجريتها</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>أمس</translation>
    </message>
    <message>
        <source>Or another day</source>
        <translation>أو يوم آخر</translation>
    </message>
    <message>
        <source>To its end?</source>
        <translation>حتى النهاية؟</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>Stopped early</source>
        <translation>أُوقفت مبكرًا</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>كيف كان الإحساس؟</translation>
    </message>
    <message>
        <source>Skin since then</source>
        <translation>الجلد منذ ذلك الحين</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>ملاحظة (اختياري)</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>A hand. The ring comes off, the watch lies beside it.</source>
        <translation>يد يُنزع منها الخاتم، والساعة إلى جانبها.</translation>
    </message>
    <message>
        <source>A fingertip puts a thin layer of jelly on a cut, and only there.</source>
        <translation>طرف إصبع يضع طبقة رقيقة من الفازلين على الجرح، وعليه فقط.</translation>
    </message>
    <message>
        <source>Two trays are put on a wooden table.</source>
        <translation>يوضع حوضان على طاولة خشبية.</translation>
    </message>
    <message>
        <source>Two trays are put on the floor in front of a chair.</source>
        <translation>يوضع حوضان على الأرض أمام كرسي.</translation>
    </message>
    <message>
        <source>The plate goes into the tray, and the grid over the plate.</source>
        <translation>توضع الصفيحة في الحوض، والشبكة فوق الصفيحة.</translation>
    </message>
    <message>
        <source>Two pads go into a bowl of water.</source>
        <translation>توضع وسادتان في وعاء فيه ماء.</translation>
    </message>
    <message>
        <source>A battery goes into its place, plus and minus as marked.</source>
        <translation>توضع بطارية في مكانها، والموجب والسالب كما هو مبيّن.</translation>
    </message>
    <message>
        <source>The machine is off. Two leads are plugged in.</source>
        <translation>الجهاز مطفأ. ويوصَل سلكان.</translation>
    </message>
    <message>
        <source>Two hands in two trays. Between them lies the remote, within their reach.</source>
        <translation>يدان في حوضين. وبينهما جهاز التحكم عن بعد، في متناولهما.</translation>
    </message>
    <message>
        <source>A finger switches the machine off. The meter shows zero.</source>
        <translation>إصبع يطفئ الجهاز. والمقياس عند الصفر.</translation>
    </message>
    <message>
        <source>A finger switches the machine on. The light comes on, the meter shows zero.</source>
        <translation>إصبع يشغّل الجهاز. يضيء المصباح، والمقياس عند الصفر.</translation>
    </message>
    <message>
        <source>The meter under a magnifying glass. It shows zero.</source>
        <translation>المقياس تحت عدسة مكبّرة. وهو عند الصفر.</translation>
    </message>
    <message>
        <source>Fingers turn the knob up in small steps. The meter rises.</source>
        <translation>أصابع تدير المقبض إلى أعلى بخطوات صغيرة. والمقياس يرتفع.</translation>
    </message>
    <message>
        <source>Fingers turn the knob down in small steps. The meter is at zero.</source>
        <translation>أصابع تدير المقبض إلى أسفل بخطوات صغيرة. والمقياس عند الصفر.</translation>
    </message>
    <message>
        <source>A finger on the upper button of the remote. Up in small steps.</source>
        <translation>إصبع على الزر العلوي لجهاز التحكم عن بعد. إلى أعلى بخطوات صغيرة.</translation>
    </message>
    <message>
        <source>A finger on the lower button of the remote. Down in small steps.</source>
        <translation>إصبع على الزر السفلي لجهاز التحكم عن بعد. إلى أسفل بخطوات صغيرة.</translation>
    </message>
    <message>
        <source>Two hands flat in two trays, under water.</source>
        <translation>يدان مبسوطتان في حوضين، تحت الماء.</translation>
    </message>
    <message>
        <source>Two feet flat in two trays, under water.</source>
        <translation>قدمان مبسوطتان في حوضين، تحت الماء.</translation>
    </message>
    <message>
        <source>A pad under each arm, each on a lead to the machine.</source>
        <translation>وسادة تحت كل ذراع، وكل منهما موصولة بسلك إلى الجهاز.</translation>
    </message>
    <message>
        <source>Both hands come out of the trays.</source>
        <translation>تخرج اليدان من الحوضين.</translation>
    </message>
    <message>
        <source>The meter shows zero. Each lead goes to the place of the other.</source>
        <translation>المقياس عند الصفر. ويوضع كل سلك مكان الآخر.</translation>
    </message>
    <message>
        <source>The meter shows zero. A finger flips the polarity switch.</source>
        <translation>المقياس عند الصفر. وإصبع يقلب مفتاح القطبية.</translation>
    </message>
    <message>
        <source>The two pads change sides: right goes left, left goes right.</source>
        <translation>تتبادل الوسادتان مكانيهما: اليمنى إلى اليسار، واليسرى إلى اليمين.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>تُنزع الوسادتان من الإبطين.</translation>
    </message>
    <message>
        <source>Two hands are dried with a towel.</source>
        <translation>تُجفَّف يدان بمنشفة.</translation>
    </message>
    <message>
        <source>Two feet are dried with a towel.</source>
        <translation>تُجفَّف قدمان بمنشفة.</translation>
    </message>
    <message>
        <source>Tray, plate and grid stand upright and drip dry.</source>
        <translation>الحوض والصفيحة والشبكة قائمة تقطر وتجف.</translation>
    </message>
    <message>
        <source>A hand. Under a magnifying glass: a cut and red spots.</source>
        <translation>يد. وتحت عدسة مكبّرة: جرح وبقع حمراء.</translation>
    </message>
    <message>
        <source>A foot. Under a magnifying glass: a cut and red spots.</source>
        <translation>قدم. وتحت عدسة مكبّرة: جرح وبقع حمراء.</translation>
    </message>
    <message>
        <source>One arm raised. Under a magnifying glass: red spots in the armpit.</source>
        <translation>ذراع مرفوعة. وتحت عدسة مكبّرة: بقع حمراء في الإبط.</translation>
    </message>
    <message>
        <source>An antiperspirant beside an armpit, struck out. Below it: 24 hours.</source>
        <translation>مضاد تعرق بجانب إبط، مشطوب عليه. وتحته: 24 ساعة.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>شفرة حلاقة بجانب إبط، مشطوب عليها. وتحتها: ثلاثة أيام.</translation>
    </message>
    <message>
        <source>A jug with %1 ml is poured into a low tray. A line across the tray marks the level.</source>
        <translation>يُصبّ إبريق فيه %1 مل في حوض منخفض. وخط بعرض الحوض يبيّن مستوى الماء.</translation>
    </message>
    <message>
        <source>Somebody has both hands in trays. A helper stands close by, a finger on the knob.</source>
        <translation>شخص يداه في حوضين. ومن يساعده واقف بجانبه، وإصبعه على المقبض.</translation>
    </message>
    <message>
        <source>Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.</source>
        <translation>شخص جالس: اليد اليمنى في حوض، والقدم اليمنى في حوض آخر. واليسريان خارجهما.</translation>
    </message>
    <message>
        <source>Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.</source>
        <translation>شخص جالس: اليد اليسرى في حوض، والقدم اليسرى في حوض آخر. واليمنيان خارجهما.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Look again</source>
        <translation>انظر مجددًا</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>ضع ملفًا ينتهي بـ %1 في %2 ثم انظر مجددًا.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>اختر ملفًّا</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>اخترت: %1</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Before you begin</source>
        <translation>قبل أن تبدأ</translation>
    </message>
    <message>
        <source>Who is it for?</source>
        <translation>لمن هو؟</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>أين؟</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>جهازك</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>أسئلة صحية</translation>
    </message>
    <message>
        <source>Your daily hour</source>
        <translation>ساعتك اليومية</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>الخطوة %1 من %2</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>بعض الأجوبة تعني لا جلسة حتى يسمح بها طبيب. تبقى أجوبتك على هذا الهاتف.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>مرة كل يوم يسألك Firstdew عن رطوبة جلدك. تكفي لمستان.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>القيد عند</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>تم</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>خطوة إلى الوراء</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Settings.</source>
        <translation>اختر كل موضع تعالجه. يمكن تغييره في الإعدادات.</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand it over</source>
        <translation>تسليمها</translation>
    </message>
    <message>
        <source>This care sheet is not complete. Go back and fill in what is marked.</source>
        <translation>ورقة الرعاية هذه غير مكتملة. ارجع واملأ ما هو معلّم.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>عرضه</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>على الشاشة</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>في Firstdew لديهم: الخطة، ورقة الرعاية، مسح الرمز.</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>ورقة الرعاية كرمز QR</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>على الورق</translation>
    </message>
    <message>
        <source>Print or share the page</source>
        <translation>طباعة الصفحة أو مشاركتها</translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation>الصفحة كما ستُطبع</translation>
    </message>
    <message>
        <source>As a file</source>
        <translation>كملف</translation>
    </message>
    <message>
        <source>Save the page</source>
        <translation>حفظ الصفحة</translation>
    </message>
    <message>
        <source>Share the file</source>
        <translation>مشاركة الملف</translation>
    </message>
    <message>
        <source>Save the file</source>
        <translation>حفظ الملف</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>No session until a clinician has said that it is safe for you.</source>
        <translation>لا جلسة حتى يقول طبيب إنها آمنة لك.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>اسأل طبيبًا أولًا ودوّن من قال نعم.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>لا يمنع عادةً؛ ذكره أحد المستشفيات. أخبر طبيبك به.</translation>
    </message>
    <message>
        <source>Approved by %1 until %2.</source>
        <translation>صرّح به %1 حتى %2.</translation>
    </message>
    <message>
        <source>The approval by %1 has expired. Ask again before your next session.</source>
        <translation>انتهت مدة تصريح %1. اسأل مرة أخرى قبل جلستك القادمة.</translation>
    </message>
    <message>
        <source>You answered yes on %1. That counts until a clinician has cleared it.</source>
        <translation>أجبتَ بنعم في %1. يبقى ذلك ساريًا إلى أن يسمح به مختص صحي.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>أسئلة صحية</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>بعض الأجوبة تعني لا جلسة حتى يسمح بها طبيب. تبقى أجوبتك على هذا الهاتف.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>بلا سماح: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>من قال إنه آمن؟</translation>
    </message>
    <message>
        <source>Record that it is cleared</source>
        <translation>تدوين السماح</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>اسم الطبيب أو الممرضة. يُحفظ في سجلك.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>في أي يوم؟</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>النسخ الاحتياطي والتصدير والحذف</translation>
    </message>
    <message>
        <source>Firstdew sessions</source>
        <translation>جلسات Firstdew</translation>
    </message>
    <message>
        <source>A session is planned</source>
        <translation>هناك جلسة مخططة</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>تم: %1</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>تم.</translation>
    </message>
    <message>
        <source>Your record is as it was.</source>
        <translation>سجلك كما كان.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>نسخة احتياطية</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>ملف واحد مشفّر (OpenPGP) فيه كل شيء. بدون كلمة السر لا يفتحه أحد، ولا أنت.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>كلمة السر</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>ثمانية أحرف على الأقل.</translation>
    </message>
    <message>
        <source>Make a back-up</source>
        <translation>إنشاء نسخة احتياطية</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>استعادة</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>كلمة سر النسخة</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>يُستبدل ما هو هنا الآن. وتُحفظ نسخة منه.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>تصدير</translation>
    </message>
    <message>
        <source>These files are not encrypted; share them with care.</source>
        <translation>هذه الملفات غير مشفّرة؛ شاركها بحذر.</translation>
    </message>
    <message>
        <source>Everything, as JSON</source>
        <translation>كل شيء، بصيغة JSON</translation>
    </message>
    <message>
        <source>For medical records, as FHIR</source>
        <translation>للسجلات الطبية، بصيغة FHIR</translation>
    </message>
    <message>
        <source>Planned sessions, for a calendar</source>
        <translation>الجلسات المخططة، للتقويم</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>استيراد</translation>
    </message>
    <message>
        <source>Add from this file</source>
        <translation>إضافة من هذا الملف</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>حذف</translation>
    </message>
    <message>
        <source>Delete this person</source>
        <translation>حذف هذا الشخص</translation>
    </message>
    <message>
        <source>The record of %1 is deleted for good.</source>
        <translation>يُحذف سجل %1 نهائيًا.</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>هذا الشخص</translation>
    </message>
    <message>
        <source>Delete everything</source>
        <translation>حذف كل شيء</translation>
    </message>
    <message>
        <source>Every record on this phone is deleted for good.</source>
        <translation>تُحذف كل السجلات على هذا الهاتف نهائيًا.</translation>
    </message>
    <message>
        <source>Keep things as they are</source>
        <translation>إبقاء كل شيء كما هو</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet, as CSV</source>
        <translation>جداول لبرنامج الجداول، بصيغة CSV</translation>
    </message>
    <message>
        <source>Share it</source>
        <translation>مشاركة</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>إخفاء ما أكتبه</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>إظهار ما أكتبه</translation>
    </message>
    <message>
        <source>Add as a new person</source>
        <translation>إضافة كشخص جديد</translation>
    </message>
    <message>
        <source>Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.</source>
        <translation>يُحذف نهائيًا، هنا وفي النسخ على هذا الهاتف. أما الملفات التي صدّرتها أو شاركتها فتبقى حيث هي. عند الشك، أنشئ نسخة احتياطية أولًا.</translation>
    </message>
</context>
<context>
    <name>LimitsCard</name>
    <message>
        <source>Limits</source>
        <translation>الحدود</translation>
    </message>
    <message>
        <source>Your birthday is not set, so the lower limits for children count.</source>
        <translation>تاريخ ميلادك غير مدوّن، لذا تسري حدود الأطفال الأدنى.</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>البالغ بجانب الطفل: %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>بحد أقصى %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>لا يُستعمل</translation>
    </message>
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>Make or model</source>
        <translation>المكتوب على الجهاز</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>اختياري</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>التيار الذي يعطيه (انظر تعليماته)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>اختر واحدًا على الأقل.</translation>
    </message>
    <message>
        <source>How is polarity reversed?</source>
        <translation>كيف تُعكس القطبية؟</translation>
    </message>
    <message>
        <source>By swapping the leads</source>
        <translation>بتبديل السلكين</translation>
    </message>
    <message>
        <source>By a switch</source>
        <translation>بمفتاح</translation>
    </message>
    <message>
        <source>Is there a remote control?</source>
        <translation>هل هناك جهاز تحكم عن بعد؟</translation>
    </message>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>What does it run on?</source>
        <translation>بماذا يعمل؟</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>بطاريات</translation>
    </message>
    <message>
        <source>Mains adapter</source>
        <translation>محوّل كهرباء</translation>
    </message>
    <message>
        <source>Size of one armpit pad in cm² (length × width)</source>
        <translation>مساحة لبّادة إبط واحدة بوحدة سم² (الطول × العرض)</translation>
    </message>
    <message>
        <source>Optional. Until it is entered, the limit for armpits stays low.</source>
        <translation>اختياري. يبقى حد الإبطين منخفضًا إلى أن تُدخلها.</translation>
    </message>
    <message>
        <source>By exchanging the armpit pads</source>
        <translation>بتبديل لبّادتي الإبطين</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Machine and kit</source>
        <translation>الجهاز واللوازم</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>بطاريات</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
            <numerusform>الجلسات الباقية نحو %n. أربع بطاريات قلوية تكفي نحو ثلاث.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>قل متى وضعت بطاريات جديدة فيعدّ Firstdew الجلسات.</translation>
    </message>
    <message>
        <source>New batteries put in</source>
        <translation>وُضعت بطاريات جديدة</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>الجهاز</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>Where it is used</source>
        <translation>أين يُستعمل</translation>
    </message>
</context>
<context>
    <name>MakeSheetPage</name>
    <message>
        <source>Make a care sheet</source>
        <translation>إعداد ورقة رعاية</translation>
    </message>
    <message>
        <source>Call me before you go on.</source>
        <translation>اتصل بي قبل أن تتابع.</translation>
    </message>
    <message>
        <source>Check how you do it with Firstdew, do three more sessions, then call me.</source>
        <translation>راجع طريقتك مع Firstdew، وقم بثلاث جلسات أخرى، ثم اتصل بي.</translation>
    </message>
    <message>
        <source>See your doctor about other treatments.</source>
        <translation>راجع طبيبك بشأن علاجات أخرى.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>لا شيء</translation>
    </message>
    <message>
        <source>Days I choose</source>
        <translation>أيام أختارها</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>لمن</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>الاسم</translation>
    </message>
    <message>
        <source>Optional. It stands on the paper alone, not in the code.</source>
        <translation>اختياري. يظهر على الورق لا في الرمز.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>العمر</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>بالغ</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>دون 18</translation>
    </message>
    <message>
        <source>Where to treat</source>
        <translation>موضع العلاج</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>As it suits the person</source>
        <translation>بحسب الشخص</translation>
    </message>
    <message>
        <source>Limit, direct current</source>
        <translation>الحد، التيار المستمر</translation>
    </message>
    <message>
        <source>Limit, pulsed current</source>
        <translation>الحد، التيار النبضي</translation>
    </message>
    <message>
        <source>Size of one armpit pad</source>
        <translation>مساحة لبّادة إبط واحدة</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>الدورة</translation>
    </message>
    <message>
        <source>Tap the days of the sessions. Day 1 is the first.</source>
        <translation>المس أيام الجلسات. اليوم 1 هو الأول.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>اليوم %1</translation>
    </message>
    <message>
        <source>Another week</source>
        <translation>أسبوع آخر</translation>
    </message>
    <message>
        <source>First session, for the dates on paper</source>
        <translation>الجلسة الأولى، للتواريخ على الورق</translation>
    </message>
    <message>
        <source>Leave the dates open</source>
        <translation>ترك التواريخ مفتوحة</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>بعد ذلك</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>المراجعة</translation>
    </message>
    <message>
        <source>Without a review</source>
        <translation>بلا مراجعة</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>إذا لم تنفع الدورة</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>بكلماتك</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>ممن</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>اسمك</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>بمن يُتصل، مع الرقم</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>ملاحظات</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>اختياري</translation>
    </message>
    <message>
        <source>Time for the hands</source>
        <translation>وقت لليدين</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>مدة انتظار الصوت حين تكون اليدان في الماء.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>للرفع</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>للخفض</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>للتبديل</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>تسليمها</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>شدة البدء في البيت</translation>
    </message>
</context>
<context>
    <name>MonthDots</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>الرطوبة عبر الزمن، %1</translation>
    </message>
    <message>
        <source>No check-in in these weeks. Tap a day to add one.</source>
        <translation>لا تسجيل في هذه الأسابيع. انقر يومًا لتضيف واحدًا.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>الخط تحت اليوم جلسة. انقر يومًا لتراه وتصحّحه.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>انقر يومًا لتراه وتصحّحه.</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>لم يُسجَّل شيء</translation>
    </message>
</context>
<context>
    <name>MovePage</name>
    <message>
        <source>Move to another phone</source>
        <translation>الانتقال إلى هاتف آخر</translation>
    </message>
    <message>
        <source>Your record goes to the other phone as one encrypted file. Which phone is this?</source>
        <translation>ينتقل سجلك إلى الهاتف الآخر في ملف واحد مشفَّر. أي هاتف هذا؟</translation>
    </message>
    <message>
        <source>The old one: send from here</source>
        <translation>القديم: أرسِل من هنا</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>الجديد: أحضِره إلى هنا</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. اختر كلمة سر</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>ستكتبها مرة أخرى على الهاتف الجديد. من دونها لا يستطيع أحد فتح الملف – ولا أنت.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>كلمة السر</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>ثمانية أحرف على الأقل.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>إخفاء ما أكتبه</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>إظهار ما أكتبه</translation>
    </message>
    <message>
        <source>2. Send the file to the new phone</source>
        <translation>2. أرسِل الملف إلى الهاتف الجديد</translation>
    </message>
    <message>
        <source>Use a cable, a memory card, or a message to yourself.</source>
        <translation>استعمل كابلًا أو بطاقة ذاكرة أو رسالة إلى نفسك.</translation>
    </message>
    <message>
        <source>3. On the new phone</source>
        <translation>3. على الهاتف الجديد</translation>
    </message>
    <message>
        <source>Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:</source>
        <translation>افتح Firstdew هناك وانقر «الانتقال من هاتف آخر». اختر الملف واكتب كلمة السر. عندها يجب أن تظهر هذه الأرقام:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>اترك هذا الهاتف كما هو حتى تراها.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>أحضِر السجل إلى هنا</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>على الهاتف القديم افتح الإعدادات، «الانتقال إلى هاتف آخر»، وأرسِل الملف إلى هذا الهاتف. ثم اختره هنا.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>اختر الملف</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>كلمة السر</translation>
    </message>
    <message>
        <source>The file holds</source>
        <translation>في الملف</translation>
    </message>
    <message>
        <source>What is on this phone now is replaced. A copy of it is kept.</source>
        <translation>يُستبدل ما على هذا الهاتف الآن. وتُحفظ نسخة منه.</translation>
    </message>
    <message>
        <source>Everything is here.</source>
        <translation>كل شيء هنا.</translation>
    </message>
    <message>
        <source>Compare the numbers with the old phone. Then you can delete the record there.</source>
        <translation>قارن الأرقام بالهاتف القديم. بعدها يمكنك حذف السجل هناك.</translation>
    </message>
    <message>
        <source>What was on this phone before is kept in %1</source>
        <translation>ما كان على هذا الهاتف محفوظ في %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>أنشئ الملف</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>أرسِل الملف</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>انظر ما فيه</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>استعمله هنا</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>استبدل ما هنا</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>إلى «اليوم»</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>خطط للدورة الأولى</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>الجلسة التالية: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>لماذا؟</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>ابدأ الآن</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>اختر الدورة</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>الانتقال إلى الحفاظ على الجفاف</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>عرض الأسئلة الصحية</translation>
    </message>
    <message>
        <source>I already treat</source>
        <translation>أنا أعالج بالفعل</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>أجريت واحدة</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>تقول ورقة رعايتك: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>قل كيف حالك الآن</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>تابع حتى اثنتي عشرة جلسة</translation>
    </message>
    <message>
        <source>Check how you do it</source>
        <translation>راجع طريقتك</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>نقلها</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>نقل الجلسة %1</translation>
    </message>
</context>
<context>
    <name>NotNowSheet</name>
    <message>
        <source>Not this time</source>
        <translation>ليس هذه المرة</translation>
    </message>
    <message>
        <source>The dampness has another cause</source>
        <translation>للرطوبة سبب آخر</translation>
    </message>
    <message>
        <source>My skin needs a rest</source>
        <translation>جلدي يحتاج إلى راحة</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>لا وقت</translation>
    </message>
    <message>
        <source>I am away from the machine</source>
        <translation>الجهاز ليس معي</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>شيء آخر</translation>
    </message>
    <message>
        <source>What&apos;s the reason? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>ما الذي يمنع؟ يُحفظ الجواب في سجلك؛ ويعود النداء حين يطلبه قيد لاحق.</translation>
    </message>
</context>
<context>
    <name>OtherPage</name>
    <message>
        <source>Other treatments</source>
        <translation>علاجات أخرى</translation>
    </message>
    <message>
        <source>Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.</source>
        <translation>سجّل ما يجفف جلدك غير الجلسات. لا تُحسب الفترات الجافة في ذلك الوقت ضمن التوقعات، ويراها من وصف لك العلاج في الملخص.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>ما هو؟</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>اسمه</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>اختياري</translation>
    </message>
    <message>
        <source>Where (none = everywhere)</source>
        <translation>أين (لا شيء = في كل مكان)</translation>
    </message>
    <message>
        <source>Works since</source>
        <translation>يعمل منذ</translation>
    </message>
    <message>
        <source>Does it still work?</source>
        <translation>هل ما زال يعمل؟</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>It ended</source>
        <translation>انتهى</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>آخر يوم</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>إزالة %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
</context>
<context>
    <name>Outgoing</name>
    <message>
        <source>Handed over.</source>
        <translation>تم التسليم.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>حُفظ باسم %1.</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>احتمال الرطوبة لكل يوم، %1</translation>
    </message>
    <message>
        <source>No session planned</source>
        <translation>لا جلسة مخطَّطة</translation>
    </message>
    <message>
        <source>Session today</source>
        <translation>جلسة اليوم</translation>
    </message>
    <message>
        <source>Session %1</source>
        <translation>جلسة %1</translation>
    </message>
    <message>
        <source>Bars come with the first session.</source>
        <translation>تأتي الأعمدة مع أول جلسة.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>جلسة مخطَّطة. كلما امتلأ العمود زاد احتمال الرطوبة حتى ذلك اليوم؛ وبعد الجلسة يبدأ من جديد.</translation>
    </message>
    <message>
        <source>session planned</source>
        <translation>جلسة مخطط لها</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>متتابعة، تنتهي في %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>بينها يوم، تنتهي في %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>, </source>
        <comment>between the parts of a list</comment>
        <translation>، </translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>المرحلة</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>المكتملة: %1</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>المقطوعة: %1</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>الجلسات في المدة</translation>
    </message>
    <message>
        <source>%1 mA·min</source>
        <translation>⁦%1 mA·min⁩</translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>الجلسة القادمة</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>لا قيود سابقة</numerusform>
            <numerusform>قيد سابق واحد</numerusform>
            <numerusform>قيدان سابقان</numerusform>
            <numerusform>%n قيود سابقة</numerusform>
            <numerusform>%n قيدًا سابقًا</numerusform>
            <numerusform>%n قيد سابق</numerusform>
        </translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>الأسئلة الصحية: لا جواب بنعم.</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>أُجيب بنعم عن: %1.</translation>
    </message>
    <message>
        <source>Cleared by %1 on %2: %3.</source>
        <translation>سمح به %1 في %2: %3.</translation>
    </message>
    <message>
        <source>Machine: %1.</source>
        <translation>الجهاز: %1.</translation>
    </message>
    <message>
        <source>direct and pulsed current</source>
        <translation>تيار مستمر ونبضي</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>تيار مستمر</translation>
    </message>
    <message>
        <source>Recorded by the person at home; not a medical device, no diagnosis. Machine&apos;s instructions, local rules and the clinician come first. Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>سجّله الشخص في بيته؛ ليس جهازًا طبيًا ولا تشخيصًا. تعليمات الجهاز والقواعد المحلية والطبيب لها الأولوية. حروق أو فقاعات أو إغماء أو خفقان: توقف واطلب المساعدة.</translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>ملخص الإرحال الأيوني</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>الاسم غير مذكور</translation>
    </message>
    <message>
        <source>%1   ·   %2 to %3</source>
        <translation>%1   ·   %2 إلى %3</translation>
    </message>
    <message>
        <source>No site in use.</source>
        <translation>لا موضع قيد العلاج.</translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where 65.2 % of 92 responded).</source>
        <translation>تُحسب مدد الجفاف من آخر جلسة إلى أول يوم رطب، وتُعامل الأيام غير المسجلة والتجديدات التي جرت قبل الرطوبة على حقيقتها (رقابة بالفترات ومن اليمين). الاستجابة حسب HDSS: درجتان قوية، ودرجة جيدة (Gülmez &amp; Solak, J Clin Med 2026;15:640، واستجاب فيها 65.2 % من 92).</translation>
    </message>
    <message>
        <source>median %1 days (80 %: %2 to %3)</source>
        <translation>الوسيط %1 يومًا (80 %: من %2 إلى %3)</translation>
    </message>
    <message>
        <source>%1 of %2 sessions done</source>
        <translation>أُنجزت %1 من %2 جلسات</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>البطاريات: لم تبقَ جلسات.</numerusform>
            <numerusform>البطاريات: بقيت جلسة واحدة تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت جلستان تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسات تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسة تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسة تقريبًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>قُطعت</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>الموضع</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>الأعلى</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>المريح</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>الشحنة</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>الإحساس</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>الجلسات</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>لا جلسات أقدم.</numerusform>
            <numerusform>جلسة أقدم واحدة؛ وهي في الملفات المصدَّرة.</numerusform>
            <numerusform>جلستان أقدم؛ وهما في الملفات المصدَّرة.</numerusform>
            <numerusform>%n جلسات أقدم؛ وكلها في الملفات المصدَّرة.</numerusform>
            <numerusform>%n جلسة أقدم؛ وكلها في الملفات المصدَّرة.</numerusform>
            <numerusform>%n جلسة أقدم؛ وكلها في الملفات المصدَّرة.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>لم تُجَب أسئلة الصحة بعد.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>ورقة علاج من %1، %2، لـ: %3.</translation>
    </message>
    <message>
        <source>Armpit pads: %1 cm² each.</source>
        <translation>لبادات الإبط: %1 سم² لكل واحدة.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>لم يُدخل حجم لبادات الإبط، لذلك يبقى حدها منخفضًا.</translation>
    </message>
    <message>
        <source>Health questions and prescription</source>
        <translation>الأسئلة الصحية والوصفة</translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>لا تسجيلات: %1.</numerusform>
            <numerusform>تسجيلات في يوم واحد: %1.</numerusform>
            <numerusform>تسجيلات في يومين: %1.</numerusform>
            <numerusform>تسجيلات في %n أيام: %1.</numerusform>
            <numerusform>تسجيلات في %n يومًا: %1.</numerusform>
            <numerusform>تسجيلات في %n يوم: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days with a circumstance: %1.</source>
        <translation>أيام فيها ظرف: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1 mA·min.</source>
        <translation>متوسط الشحنة لكل جلسة: %1 mA·min.</translation>
    </message>
    <message>
        <source>%1 mg a minute on %2</source>
        <translation>%1 ملغ في الدقيقة في %2</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>الوزن: %1.</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>تُسأل الشدة بكلمات التطبيق الخاصة، في أربع درجات وفق مقياس HDSS.</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>أرقام هذه الفترة</translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>توقّف وانظر</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>لا ينفع بعد</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>ينفع جزئيًا</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>إنه ينفع</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>من المبكر القول</translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>لم يتجاوز المقياس الحد في أي جلسة، %1.</numerusform>
            <numerusform>تجاوز المقياس الحد في جلسة واحدة، في %1.</numerusform>
            <numerusform>تجاوز المقياس الحد في جلستين، آخرهما في %1.</numerusform>
            <numerusform>تجاوز المقياس الحد في %n جلسات، آخرها في %1.</numerusform>
            <numerusform>تجاوز المقياس الحد في %n جلسةً، آخرها في %1.</numerusform>
            <numerusform>تجاوز المقياس الحد في %n جلسة، آخرها في %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course brought no response (%1). Talk about other treatments.</source>
        <translation>لم تُظهر الدورة استجابة (%1). تحدّثا عن علاجات أخرى.</translation>
    </message>
    <message>
        <source>The review named on the care sheet is due (%1).</source>
        <translation>حان موعد المراجعة المذكور في ورقة الرعاية (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>لا أسئلة لك أدناه.</numerusform>
            <numerusform>هناك سؤال واحد لك أدناه.</numerusform>
            <numerusform>هناك سؤالان لك أدناه.</numerusform>
            <numerusform>هناك %n أسئلة لك أدناه.</numerusform>
            <numerusform>هناك %n سؤالًا لك أدناه.</numerusform>
            <numerusform>هناك %n سؤال لك أدناه.</numerusform>
        </translation>
    </message>
    <message>
        <source>no birth date entered</source>
        <translation>لم يُدخل تاريخ الميلاد</translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>طفل، أقل من سنة</numerusform>
            <numerusform>طفل، سنة واحدة</numerusform>
            <numerusform>طفل، سنتان</numerusform>
            <numerusform>طفل، %n سنوات</numerusform>
            <numerusform>طفل، %n سنةً</numerusform>
            <numerusform>طفل، %n سنة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>بالغ، أقل من سنة</numerusform>
            <numerusform>بالغ، سنة واحدة</numerusform>
            <numerusform>بالغ، سنتان</numerusform>
            <numerusform>بالغ، %n سنوات</numerusform>
            <numerusform>بالغ، %n سنةً</numerusform>
            <numerusform>بالغ، %n سنة</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>من %1 إلى %2</translation>
    </message>
    <message>
        <source>damp days a week: %1</source>
        <translation>الأيام الرطبة في الأسبوع: %1</translation>
    </message>
    <message>
        <source>severity %1 now, %2 before</source>
        <translation>الشدة %1 الآن، %2 قبلًا</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site: its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For you to do</source>
        <translation>المطلوب منك</translation>
    </message>
    <message>
        <source>Nothing at present.</source>
        <translation>لا شيء معلّق.</translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1، بلا مدة</numerusform>
            <numerusform>%1، مدة ثانية واحدة</numerusform>
            <numerusform>%1، مدة ثانيتين</numerusform>
            <numerusform>%1، مدة %n ثوانٍ</numerusform>
            <numerusform>%1، مدة %n ثانيةً</numerusform>
            <numerusform>%1، مدة %n ثانية</numerusform>
        </translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>الجلد والتيار في هذه الفترة</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>الجلد</translation>
    </message>
    <message>
        <source>Nothing recorded.</source>
        <translation>لا شيء مسجّل.</translation>
    </message>
    <message>
        <source>Above the limit</source>
        <translation>فوق الحد</translation>
    </message>
    <message>
        <source>No sessions in this period.</source>
        <translation>لا جلسات في هذه الفترة.</translation>
    </message>
    <message>
        <source>Limits now</source>
        <translation>الحدود الآن</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>score on day</comment>
        <translation>%1 في %2</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>الدورة</translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>ولا واحدة منها في يوم غير المقرر</numerusform>
            <numerusform>واحدة منها في يوم غير المقرر</numerusform>
            <numerusform>اثنتان منها في يوم غير المقرر</numerusform>
            <numerusform>%n منها في يوم غير المقرر</numerusform>
            <numerusform>%n منها في يوم غير المقرّر</numerusform>
            <numerusform>%n منها في غير يومها المقرر</numerusform>
        </translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>أعلى تيار مريح في الفترة</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>مدة الجفاف المعتادة، كل الوقت</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>علاجات أخرى</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>لا تُحسب الفترات الجافة في هذا الوقت ضمن التوقعات.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>تعليم: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>شوهد: %1.</translation>
    </message>
    <message>
        <source>%1, %2: at most %3</source>
        <translation>%1، %2: بحد أقصى %3</translation>
    </message>
    <message>
        <source>Your treatment plan</source>
        <translation>خطة علاجك</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>لـ: %1</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>من %1، %2</translation>
    </message>
    <message>
        <source>The app or the machine may show a lower limit. The lowest one counts.</source>
        <translation>قد يُظهر التطبيق أو الجهاز حدًّا أدنى من هذا. والأدنى هو المعتبر.</translation>
    </message>
    <message>
        <source>Current to zero and polarity swapped after each part.</source>
        <translation>بعد كل جزء: التيار إلى الصفر ثم تبديل القطبية.</translation>
    </message>
    <message>
        <source>In Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>في Firstdew: الخطة، ورقة الرعاية، مسح الرمز.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>اليوم %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Your sessions</source>
        <translation>جلساتك</translation>
    </message>
    <message>
        <source>Tick each session when it is done.</source>
        <translation>ضع علامة على كل جلسة بعد إتمامها.</translation>
    </message>
    <message>
        <source>If you begin on another day, every day moves along.</source>
        <translation>إذا بدأت في يوم آخر تحركت الأيام كلها معه.</translation>
    </message>
    <message>
        <source>Day 1 is the day of your first session.</source>
        <translation>اليوم 1 هو يوم جلستك الأولى.</translation>
    </message>
    <message>
        <source>Firstdew tells you when the next one is due.</source>
        <translation>يخبرك Firstdew متى يحين موعد التالية.</translation>
    </message>
    <message>
        <source>Look at the skin. Cover small cuts with jelly.</source>
        <translation>انظر إلى الجلد. غطِّ الجروح الصغيرة بالفازلين.</translation>
    </message>
    <message>
        <source>Soak the pads.</source>
        <translation>بلّل اللبادات.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>الصفيحة أولًا، ثم الشبكة فوقها، ثم ماء دافئ.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>ضع اللبادات. شغّل: المقياس عند الصفر.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>الجلد تحت الماء. شغّل: المقياس عند الصفر.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>ارفع ببطء. قد تشعر بوخز. ولا يجوز أن تتألم.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>بين الأجزاء: إلى الصفر، بدّل القطبية أو الجانب، ثم ارفع من جديد.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>بين الأجزاء: إلى الصفر، بدّل، ثم ارفع من جديد.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>إلى الصفر، أطفئ الجهاز. ثم انزع اللبادات.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then lift out.</source>
        <translation>إلى الصفر، أطفئ الجهاز. ثم ارفع من الماء.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>يبقى شخص بالغ بجانب الطفل طوال الوقت.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>اليدان في الماء: يبقى أحد بجانبك.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>كل جلسة: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>متى تتوقف</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then lift out.</source>
        <translation>إن تألمت أو شعرت بإغماء أو خفقان: اخفض إلى الصفر، أطفئ الجهاز، ثم ارفع من الماء.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>حرق أو بثرة: اترك الجهاز مطفأ حتى يفحص الموضعَ مختص صحي.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>حمل أو زرعة جديدة أو تغيّر في أي إجابة صحية: اترك الجهاز مطفأ واسأل أولًا.</translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation>اتصل بـ: %1</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>بعد ذلك</translation>
    </message>
    <message>
        <source>Review: %1</source>
        <translation>المراجعة: %1</translation>
    </message>
    <message>
        <source>If the course does not help: %1</source>
        <translation>إذا لم تنفع الدورة: %1</translation>
    </message>
    <message>
        <source>Written with Firstdew, which is not a medical device. Follow your machine&apos;s instructions and your clinician.</source>
        <translation>كُتبت بواسطة Firstdew، وهو ليس جهازًا طبيًّا. اتبع تعليمات جهازك وطبيبك.</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>لا جلسة في الوقت الحالي</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>لم يبدأ بعد</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>انظر إلى الجلد (%1): سُجّل حرق في %2. لا جلسة هناك قبل ذلك.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>انظر إلى الجلد (%1): سُجّلت نفطة في %2. لا جلسة هناك قبل ذلك.</translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has cleared it.</source>
        <translation>هل هذا العلاج ممكن مع %1 (الإجابة نعم في %2)؟ لا جلسة حتى يأذن مختص.</translation>
    </message>
    <message>
        <source>%1: %2 · %3</source>
        <comment>day: site · skin</comment>
        <translation>%1: %2 · %3</translation>
    </message>
    <message>
        <source>%1: %2 · %3 with a limit of %4</source>
        <comment>day: site · peak, limit</comment>
        <translation>%1: %2 · %3 والحد %4</translation>
    </message>
    <message>
        <source>%1 · %2: %3. %4.</source>
        <comment>kind of current · sites: limit. Who set it.</comment>
        <translation>%1 · %2: %3. %4.</translation>
    </message>
    <message>
        <source>No prescriber has set a limit.</source>
        <translation>لم يحدد أي معالج حدًا.</translation>
    </message>
    <message>
        <source>%1 on %2, to begin with</source>
        <comment>score on day</comment>
        <translation>%1 في %2، في البداية</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>لم تُتابع أي فترة جافة حتى نهايتها</numerusform>
            <numerusform>تمت متابعة فترة جافة واحدة حتى نهايتها</numerusform>
            <numerusform>تمت متابعة فترتين جافتين حتى نهايتهما</numerusform>
            <numerusform>تمت متابعة %n فترات جافة حتى نهايتها</numerusform>
            <numerusform>تمت متابعة %n فترة جافة حتى نهايتها</numerusform>
            <numerusform>تمت متابعة %n فترة جافة حتى نهايتها</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>لا شيء لم يُتابع حتى النهاية</numerusform>
            <numerusform>واحدة لم تُتابع حتى النهاية</numerusform>
            <numerusform>اثنتان لم تُتابعا حتى النهاية</numerusform>
            <numerusform>%n لم تُتابع حتى النهاية</numerusform>
            <numerusform>%n لم تُتابع حتى النهاية</numerusform>
            <numerusform>%n لم تُتابع حتى النهاية</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>غير معروف بعد</translation>
    </message>
    <message>
        <source>planned from %1</source>
        <translation>مخططة من %1</translation>
    </message>
    <message>
        <source>last session on %1</source>
        <translation>آخر جلسة في %1</translation>
    </message>
    <message>
        <source>Severity 1–4, own answer (modelled on the HDSS)</source>
        <translation>الشدة 1–4، إجابة الشخص نفسه (على نمط HDSS)</translation>
    </message>
    <message>
        <source>Last check-in</source>
        <translation>آخر تسجيل</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, level</comment>
        <translation>%1، %2</translation>
    </message>
    <message numerus="yes">
        <source>%n in the period</source>
        <comment>check-ins</comment>
        <translation>
            <numerusform>لا شيء في الفترة</numerusform>
            <numerusform>واحد في الفترة</numerusform>
            <numerusform>اثنان في الفترة</numerusform>
            <numerusform>%n في الفترة</numerusform>
            <numerusform>%n في الفترة</numerusform>
            <numerusform>%n في الفترة</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>أيام الأسبوع المسجلة رطبة، وكذلك بعد الحر أو الجهد، من 0 إلى 7. الداكن: مبلل أو يقطر. العلامات: الجلسات.</translation>
    </message>
    <message>
        <source> · %1 · %2</source>
        <comment>continues a line: current, its kind</comment>
        <translation> · %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>milliamperes · kind of current</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 (limit %3)</source>
        <comment>level · day</comment>
        <translation>%1 · %2 (الحد %3)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>level · day</comment>
        <translation>%1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>أيام الجفاف بعد الجلسات. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
            <numerusform>أيام الجفاف بعد آخر جلسة. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
            <numerusform>أيام الجفاف بعد آخر جلستين. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسات. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسة. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسة. المجوّف: النهاية غير دقيقة. المدبّب: النهاية لم تُتابع.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>ابدأ بـ %1 أو أقل.</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>People</source>
        <translation>الأشخاص</translation>
    </message>
    <message>
        <source>Each person has a record of their own; nothing is mixed.</source>
        <translation>لكل شخص سجل خاص به؛ ولا يختلط شيء.</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>أنا</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>البالغ بجانب الطفل: %1</translation>
    </message>
    <message>
        <source>Shown now</source>
        <translation>معروض الآن</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>عرض</translation>
    </message>
    <message>
        <source>Your details</source>
        <translation>بياناتك</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>إضافة شخص</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>إضافة</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>First name, or what you like to be called</source>
        <translation>الاسم الأول، أو ما تحب أن تُنادى به</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>اختياري</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>تاريخ الميلاد</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>البالغ بجانب الطفل</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>لا يُعالَج الأطفال إلا بنصيحة طبية وبجانبهم شخص بالغ.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>الطول بالسنتيمتر</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>يمكن أن يبقى فارغًا. مع الوزن يدل على مساحة الجلد المعالَج.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>الوزن بالكيلوغرام</translation>
    </message>
    <message>
        <source>It decides which limits count. Without it those for children do.</source>
        <translation>يحدد أي الحدود تسري. وبدونه تسري حدود الأطفال.</translation>
    </message>
    <message>
        <source>Write a number from %1 to %2.</source>
        <translation>اكتب رقمًا من %1 إلى %2.</translation>
    </message>
</context>
<context>
    <name>PickRow</name>
    <message>
        <source>Choose</source>
        <translation>اختر</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>Next session: %1</source>
        <translation>الجلسة التالية: %1</translation>
    </message>
    <message numerus="yes">
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>اختر الدورة</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>الدورة</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>متابعة</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>إيقاف مؤقت</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>أسئلة صحية</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>بانتظار الإجابة</translation>
    </message>
    <message>
        <source>Something stands in the way</source>
        <translation>هناك ما يمنع</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>تمت الإجابة</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>أيام الغياب</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 إلى %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>لا شيء</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>ورقة الرعاية</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>من %1، %2</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>لا شيء بعد</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine; your limits and your plan then stand here.</source>
        <translation>حدّد أين تُعالج وبأي جهاز؛ عندها تظهر هنا حدودك وخطتك.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>انقر يومًا لتنقل جلسته.</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>تعلّمتها من أحد</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>غير مسجل</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>تدريب</translation>
    </message>
    <message>
        <source>A whole session with the machine off</source>
        <translation>جلسة كاملة والجهاز مطفأ</translation>
    </message>
</context>
<context>
    <name>PracticeBanner</name>
    <message>
        <source>Practice: machine stays off</source>
        <translation>تدريب: يبقى الجهاز مطفأً</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>اترك التدريب</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>Check everything on the list. Machine off, current at zero.</source>
        <translation>تحقق من كل ما في القائمة. الجهاز مطفأ والتيار عند الصفر.</translation>
    </message>
    <message>
        <source>Hands in, in fifteen seconds. Keep them still under the water.</source>
        <translation>بعد خمس عشرة ثانية أدخل يديك. أبقهما ساكنتين تحت الماء.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>ارفع التيار ببطء. قد تشعر بوخز. ولا يجوز أن تتألم.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>اثبت. يبقى كل شيء تحت الماء.</translation>
    </message>
    <message>
        <source>Lower the current to zero. Slowly.</source>
        <translation>اخفض التيار إلى الصفر. ببطء.</translation>
    </message>
    <message>
        <source>Machine off. Now lift out, and dry your skin.</source>
        <translation>أطفئ الجهاز. ثم ارفع من الماء وجفف جلدك.</translation>
    </message>
    <message>
        <source>Look at the meter.</source>
        <translation>انظر إلى المقياس.</translation>
    </message>
    <message>
        <source>Half way.</source>
        <translation>انقضى النصف.</translation>
    </message>
    <message>
        <source>One minute left.</source>
        <translation>بقيت دقيقة واحدة.</translation>
    </message>
    <message>
        <source>Ten seconds.</source>
        <translation>عشر ثوان.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>انتهى.</translation>
    </message>
    <message>
        <source>Too high! Lower the current now.</source>
        <translation>مرتفع جدًا! اخفض التيار الآن.</translation>
    </message>
    <message>
        <source>Machine off. Now.</source>
        <translation>أطفئ الجهاز. الآن.</translation>
    </message>
    <message>
        <source>Check the list. Then start again from the beginning.</source>
        <translation>تحقق من القائمة. ثم ابدأ من جديد من البداية.</translation>
    </message>
    <message>
        <source>Lower it a little, until it is comfortable.</source>
        <translation>اخفضه قليلًا حتى يصبح مريحًا.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then lift out.</source>
        <translation>توقفت الجلسة. التيار إلى الصفر، أطفئ الجهاز، ثم ارفع من الماء.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>هذا هو مستوى صوتي. هل تسمعني مع صوت الماء؟</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، وهل الجهاز مضبوط على التيار المستمر؟ إذن المس الشاشة.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، وهل ضوء التيار النبضي مضاء؟ إذن المس الشاشة.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>ارفع التيار ببطء بجهاز التحكم عن بعد. قد تشعر بوخز. ولا يجوز أن تتألم.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>اثبت. تبقى اللبّادتان في مكانهما.</translation>
    </message>
    <message>
        <source>Lower the current to zero with the remote. Slowly.</source>
        <translation>اخفض التيار إلى الصفر بجهاز التحكم عن بعد. ببطء.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, and tap.</source>
        <translation>هل المقياس عند الصفر؟ عندئذ فقط أخرِج يديك. جففهما والمس الشاشة.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.</source>
        <translation>هل المقياس عند الصفر؟ عندئذ فقط أخرِج يديك. جففهما، وأطفئ الجهاز، والمس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Now swap the two leads. Cover small cuts again. Then tap.</source>
        <translation>هل التيار عند الصفر؟ الآن بدّل السلكين. غطِّ الجروح الصغيرة مرة أخرى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.</source>
        <translation>هل التيار عند الصفر؟ الآن اقلب مفتاح القطبية. غطِّ الجروح الصغيرة مرة أخرى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and swap the two leads. Then tap.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى، وبدّل السلكين. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى، واقلب مفتاح القطبية. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى، وضع اليمنى مكان اليسرى واليسرى مكان اليمنى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>هل التيار عند الصفر؟ الآن انتقل إلى الجانب الآخر. غطِّ الجروح الصغيرة مرة أخرى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>أطفئ الجهاز. ثم انزع اللبّادتين وجفف جلدك.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit.</source>
        <translation>جفف جلدك والأدوات.</translation>
    </message>
    <message>
        <source>I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.</source>
        <translation>كان التطبيق متوقفًا. ماذا فعل الجهاز؟ إن كنت لا تعرف فأطفئ الجهاز. ثم أجب على الشاشة.</translation>
    </message>
    <message>
        <source>It is enough for today.</source>
        <translation>هذا يكفي لليوم.</translation>
    </message>
    <message>
        <source>That was too long ago. This session is over. What you did is kept.</source>
        <translation>مضى على ذلك وقت طويل. انتهت هذه الجلسة. ما أنجزته محفوظ.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then take the pads off.</source>
        <translation>توقفت الجلسة. اخفض التيار إلى الصفر، وأطفئ الجهاز، ثم انزع اللبّادتين.</translation>
    </message>
    <message>
        <source>Practice: the machine stays off. In a real session you switch it on now. Then tap.</source>
        <translation>تدريب: يبقى الجهاز مطفأً. في جلسة حقيقية تشغّله الآن. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it up slowly now.</source>
        <translation>تدريب: بلا تيار. في جلسة حقيقية ترفعه الآن ببطء.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it down to zero now.</source>
        <translation>تدريب: بلا تيار. في جلسة حقيقية تخفضه الآن إلى الصفر.</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>On</source>
        <translation>مفعّل</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>متوقف</translation>
    </message>
    <message>
        <source>Daily check-in</source>
        <translation>القيد اليومي</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>الجلسات</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>هدوء من</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>هدوء حتى</translation>
    </message>
    <message>
        <source>Remind of a back-up each month</source>
        <translation>التذكير بنسخة احتياطية كل شهر</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.</source>
        <translation>أكثر: يأتي التجديد أبكر وأكثر. أقل: جلسات أقل وأيام رطبة أكثر. المعتاد: 2.</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>كم جلسة تستحق منك فترة رطبة واحدة؟</translation>
    </message>
</context>
<context>
    <name>SetUpFirst</name>
    <message>
        <source>Set up</source>
        <translation>الإعداد</translation>
    </message>
</context>
<context>
    <name>SetUpGoOn</name>
    <message>
        <source>Not everything is set up yet</source>
        <translation>لم يكتمل الإعداد بعد</translation>
    </message>
    <message>
        <source>Before a session, Firstdew has to know your machine and your answers to the health questions.</source>
        <translation>قبل أي جلسة يحتاج Firstdew إلى معرفة جهازك وإجاباتك عن أسئلة الصحة.</translation>
    </message>
    <message>
        <source>Go on with the set-up</source>
        <translation>متابعة الإعداد</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>أنا</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>الصوت فقط</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>النغمات فقط</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>الاهتزاز فقط</translation>
    </message>
    <message>
        <source>Voice and tones</source>
        <translation>الصوت والنغمات</translation>
    </message>
    <message>
        <source>Machine and kit</source>
        <translation>الجهاز واللوازم</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>غير محدد</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
            <numerusform>البطاريات، الجلسات الباقية نحو: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>القيد %1، هدوء من %2 إلى %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>متوقف</translation>
    </message>
    <message>
        <source>People</source>
        <translation>الأشخاص</translation>
    </message>
    <message>
        <source>Appearance and language</source>
        <translation>المظهر واللغة</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>داكن</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>فاتح</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>كالهاتف</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>الانتقال إلى هاتف آخر</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>خذ كل شيء معك</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>النسخ الاحتياطي والتصدير والحذف</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>حول التطبيق والتنبيهات</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>الإصدار %1</translation>
    </message>
    <message>
        <source>I teach others</source>
        <translation>أعلّم آخرين</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>من أتابعهم</translation>
    </message>
    <message>
        <source>Who needs a call, and care sheets for them</source>
        <translation>من يحتاج إلى اتصال، وأوراق رعاية لهم</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Appearance and language</source>
        <translation>المظهر واللغة</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>المظهر</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>كالهاتف</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>فاتح</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>داكن</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>حجم النص</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>صغير</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>عادي</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>كبير</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>أكبر</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>الأكبر</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>From</source>
        <translation>من</translation>
    </message>
    <message>
        <source>Given on</source>
        <translation>أُعطيت في</translation>
    </message>
    <message>
        <source>For</source>
        <translation>لـ</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>الدورة</translation>
    </message>
    <message>
        <source>Session days</source>
        <translation>أيام الجلسات</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>Limit, direct</source>
        <translation>الحد، المستمر</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>الحد، النبضي</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>وقت الرفع</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>وقت الخفض</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>وقت التبديل</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>المراجعة</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>ملاحظات</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n ثانية</numerusform>
            <numerusform>ثانية واحدة</numerusform>
            <numerusform>ثانيتان</numerusform>
            <numerusform>%n ثوانٍ</numerusform>
            <numerusform>%n ثانية</numerusform>
            <numerusform>%n ثانية</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>غير محدد</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1: %2 (الآن %3)</translation>
    </message>
    <message>
        <source>Armpit pads</source>
        <translation>ضمادات الإبطين</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>إذا لم تنفع الدورة</translation>
    </message>
    <message>
        <source>%1 cm² each</source>
        <translation>%1 سم² لكل منها</translation>
    </message>
    <message>
        <source>%1: the course that runs now goes on.</source>
        <translation>%1: تستمر الدورة الجارية.</translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1: تبدأ اليوم دورة بلا جلسات.</numerusform>
            <numerusform>%1: تبدأ اليوم دورة من جلسة واحدة.</numerusform>
            <numerusform>%1: تبدأ اليوم دورة من جلستين.</numerusform>
            <numerusform>%1: تبدأ اليوم دورة من %n جلسات.</numerusform>
            <numerusform>%1: تبدأ اليوم دورة من %n جلسةً.</numerusform>
            <numerusform>%1: تبدأ اليوم دورة من %n جلسة.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 It takes the place of the one that runs now.</source>
        <translation>%1 وتحل محل الدورة الجارية.</translation>
    </message>
    <message>
        <source>Level to begin with</source>
        <translation>المستوى للبداية</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>بمن يُتصل</translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>المعتاد: %1</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>غير محدد</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1: %2 × %n دقيقة</numerusform>
            <numerusform>%1: %2 × دقيقة واحدة</numerusform>
            <numerusform>%1: %2 × دقيقتان</numerusform>
            <numerusform>%1: %2 × %n دقائق</numerusform>
            <numerusform>%1: %2 × %n دقيقة</numerusform>
            <numerusform>%1: %2 × %n دقيقة</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>مرتفع جدًّا: الحد المعتاد %1. اخفضه.</translation>
    </message>
    <message>
        <source>Type your name, on one short line.</source>
        <translation>اكتب اسمك في سطر قصير واحد.</translation>
    </message>
    <message>
        <source>Choose where to treat.</source>
        <translation>اختر موضع العلاج.</translation>
    </message>
    <message>
        <source>Armpits need pulsed current. Choose that one.</source>
        <translation>الإبطان بحاجة إلى التيار النبضي. اختره.</translation>
    </message>
    <message>
        <source>Choose up to 60 days, from day 1.</source>
        <translation>اختر حتى 60 يومًا، بدءًا من اليوم 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>هذا قبل يوم الورقة. اختر يومًا بعده.</translation>
    </message>
    <message>
        <source>Keep it to one short line.</source>
        <translation>اكتفِ بسطر قصير واحد.</translation>
    </message>
    <message>
        <source>Too long for the code. Shorten it.</source>
        <translation>أطول مما يتسع له الرمز. اختصره.</translation>
    </message>
    <message>
        <source>This value cannot be used. Change it.</source>
        <translation>لا يمكن استخدام هذه القيمة. غيّرها.</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a session</source>
        <translation>الجلد بعد الجلسة</translation>
    </message>
    <message>
        <source>Burns or blisters: no session there until a clinician has looked at it.</source>
        <translation>حروق أو فقاعات: لا جلسة هناك حتى يراها طبيب.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>ملاحظة</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>اختياري</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
</context>
<context>
    <name>SoundPage</name>
    <message>
        <source>Voice and tones</source>
        <translation>الصوت والنغمات</translation>
    </message>
    <message>
        <source>During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.</source>
        <translation>أثناء الجلسة تُعلن كل خطوة والدقائق والنهاية بالصوت، فلا يحتاج أحد إلى النظر إلى الهاتف.</translation>
    </message>
    <message>
        <source>What is heard</source>
        <translation>ما يُسمع</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>الصوت فقط</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>النغمات فقط</translation>
    </message>
    <message>
        <source>The voice speaks English so far.</source>
        <translation>الصوت بالإنجليزية حاليًا.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>تحقق من علو الصوت</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>الاهتزاز فقط</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>حين تكون اليدان تحت الماء لا يشعر أحد بالهاتف: عندئذ يُسمع الصوت والنغمات على أي حال.</translation>
    </message>
    <message>
        <source>Each step also felt as a vibration</source>
        <translation>كل خطوة باهتزاز أيضًا</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.</source>
        <translation>القراءة فوق الحد تطلق الإنذار أيًا كان الاختيار هنا. الهاتف لا يرى التيار، بل ما يُدخَل فقط.</translation>
    </message>
    <message>
        <source>Whose voice</source>
        <translation>صوت من</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>صوت مسجّل</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>صوت هذا الجهاز</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>الصوت المسجّل بالإنجليزية. أما صوت هذا الجهاز فيتحدث لغتك.</translation>
    </message>
    <message>
        <source>The voice of this device can be chosen once the device has named one for your language.</source>
        <translation>يمكن اختيار صوت هذا الجهاز بعد أن يحدد الجهاز صوتًا للغتك.</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>دواسة أو مفتاح يوقف الجلسة، كزر في لوحة المفاتيح</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>يُسمع صوت خافت طوال الجلسة. إذا توقف، فاخفض التيار إلى الصفر وأطفئ الجهاز.</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1: أقل</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: أكثر</translation>
    </message>
</context>
<context>
    <name>StirredUp</name>
    <message>
        <source>Anything that might explain it?</source>
        <translation>هل كان هناك سبب؟</translation>
    </message>
</context>
<context>
    <name>StoreTrouble</name>
    <message>
        <source>Your record could not be opened</source>
        <translation>تعذّر فتح سجلك</translation>
    </message>
    <message>
        <source>The file with your record is damaged.</source>
        <translation>الملف الذي فيه سجلك تالف.</translation>
    </message>
    <message>
        <source>A newer Firstdew wrote this record.</source>
        <translation>هذا السجل كتبه إصدار أحدث من Firstdew.</translation>
    </message>
    <message>
        <source>Another program is using your record.</source>
        <translation>برنامج آخر يستعمل سجلك.</translation>
    </message>
    <message>
        <source>Your record cannot be written to.</source>
        <translation>لا يمكن الكتابة في سجلك.</translation>
    </message>
    <message>
        <source>The file in its place is not a Firstdew record, or is damaged at its very beginning.</source>
        <translation>الملف الموجود مكانه ليس سجلًا من Firstdew، أو أنه تالف في أوله.</translation>
    </message>
    <message>
        <source>The file with your record is not there or cannot be read.</source>
        <translation>الملف الذي فيه سجلك غير موجود أو تتعذر قراءته.</translation>
    </message>
    <message>
        <source>Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.</source>
        <translation>يستطيع Firstdew أن يضع في ملف جديد كل ما يمكن قراءته بعد، وما تحويه نسخة بجانبه. ويُحتفظ بالملف التالف.</translation>
    </message>
    <message>
        <source>Update Firstdew, then open it again.</source>
        <translation>حدّث Firstdew ثم افتحه مرة أخرى.</translation>
    </message>
    <message>
        <source>Close that program, then try again.</source>
        <translation>أغلق ذلك البرنامج ثم حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Let yourself write to the file and its folder, then try again.</source>
        <translation>امنح نفسك إذن الكتابة في الملف وفي مجلده، ثم حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Move that file elsewhere, put your record in its place, then try again.</source>
        <translation>انقل ذلك الملف إلى مكان آخر، وضع سجلك مكانه، ثم حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Look whether the folder is there and belongs to you, then try again.</source>
        <translation>تحقق من أن المجلد موجود وأنه لك، ثم حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>حاول مرة أخرى بعد لحظة.</translation>
    </message>
    <message>
        <source>Nothing was changed in it.</source>
        <translation>لم يتغير فيه شيء.</translation>
    </message>
    <message>
        <source>Leave the machine off until your record is open: your limits and answers stand in it.</source>
        <translation>اترك الجهاز مطفأ حتى يُفتح سجلك: ففيه حدودك وإجاباتك.</translation>
    </message>
    <message>
        <source>Repair the record</source>
        <translation>إصلاح السجل</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>حاول مرة أخرى</translation>
    </message>
    <message>
        <source>Restore a back-up</source>
        <translation>استعادة نسخة احتياطية</translation>
    </message>
    <message>
        <source>It takes the place of the damaged file, which is kept.</source>
        <translation>تحل محل الملف التالف، ويُحتفظ بالملف التالف.</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>كلمة سر النسخة</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>استعادة</translation>
    </message>
</context>
<context>
    <name>SummaryPage</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>ملخص لطبيبك</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>إلى أي مدى في الماضي</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>شهر</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>ثلاثة أشهر</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>نصف سنة</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>سنة</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>مشاركة الملخص</translation>
    </message>
    <message>
        <source>Questions for the prescriber</source>
        <translation>أسئلة للطبيب</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>سحب: %1</translation>
    </message>
    <message>
        <source>What you want to ask stands near the top of the page.</source>
        <translation>ما تريد أن تسأله يظهر قرب أعلى الصفحة.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>سؤالك</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>أضفه إلى الصفحة</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>عرضه</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>صفحة تقول كيف تسير الأمور وما تسأل عنه، وثانية فيها كل جلسة. لا يخرج شيء من الهاتف قبل أن تختار وجهته.</translation>
    </message>
    <message>
        <source>Hide the page</source>
        <translation>إخفاء الصفحة</translation>
    </message>
    <message>
        <source>Show the page here</source>
        <translation>عرض الصفحة هنا</translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>الصفحة الأولى كما ستُطبع</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>احفظه كملف</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>لا أشخاص (%n)</numerusform>
            <numerusform>شخص واحد (%n)</numerusform>
            <numerusform>شخصان (%n)</numerusform>
            <numerusform>%n أشخاص</numerusform>
            <numerusform>%n شخصًا</numerusform>
            <numerusform>%n شخص</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>لا تسجيلات (%n)</numerusform>
            <numerusform>تسجيل واحد (%n)</numerusform>
            <numerusform>تسجيلان (%n)</numerusform>
            <numerusform>%n تسجيلات</numerusform>
            <numerusform>%n تسجيلًا</numerusform>
            <numerusform>%n تسجيل</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>لا جلسات (%n)</numerusform>
            <numerusform>جلسة واحدة (%n)</numerusform>
            <numerusform>جلستان (%n)</numerusform>
            <numerusform>%n جلسات</numerusform>
            <numerusform>%n جلسة</numerusform>
            <numerusform>%n جلسة</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>آخر إدخال: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>جلسة تعليم</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>هل شاهد جلسةً من يعرف هذا العلاج؟ سجّلا معًا ما شاهده. ويظهر ذلك في الملخص.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>من شاهدها</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>اسم أو دور، مثلًا: الممرضة</translation>
    </message>
    <message>
        <source>What they saw</source>
        <translation>ما شاهده</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>التيار</translation>
    </message>
    <message>
        <source>Level agreed to begin with at home</source>
        <translation>المستوى المتفق عليه للبدء في البيت</translation>
    </message>
    <message>
        <source>None agreed</source>
        <translation>لم يُتفق عليه</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1، الحد %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>إزالة %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
</context>
<context>
    <name>TaughtText</name>
    <message>
        <source>Checked the skin and took off jewellery</source>
        <translation>فحص الجلد ونزع الحلي</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>نقع اللبّادتين وثبّتهما جيدًا</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>جهّز الحوضين والصفيحتين والماء</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>رفع ببطء وقال متى يكفي</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>بدّل عند الصفر</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>يعرف ما يفعل إذا انفصلت لبّادة</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>يعرف ما يفعل إذا خرجت يد أو قدم من الماء</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>يعرف متى يتوقف وبمن يتصل</translation>
    </message>
    <message>
        <source>%1, %2, with %3</source>
        <comment>taught: site, day, who watched</comment>
        <translation>%1، %2، مع %3</translation>
    </message>
    <message>
        <source>%1. %2: %3 agreed</source>
        <comment>taught: line, kind of current, milliamperes</comment>
        <translation>%1. %2: اتُّفق على %3</translation>
    </message>
</context>
<context>
    <name>Technique</name>
    <message>
        <source>Was the current as high as is comfortable, and never above your limit? A weak current does little.</source>
        <translation>هل كان التيار مرتفعًا بقدر ما هو مريح ولم يتجاوز حدّك أبدًا؟ التيار الضعيف لا يفيد كثيرًا.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>هل بُدّلت القطبية في منتصف كل جلسة؟</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>هل كان الجلد خاليًا من الكريم؟ الكريم يمنع مرور التيار. الفازلين يوضع على الجروح الصغيرة فقط.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>هل كان كل شيء تحت الماء، منبسطًا على الشبكة ودون ضغط؟</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>والجهاز مطفأ: هل كل سلك موصول بالكامل؟ هل الضمادات مشبعة بالماء ومثبتة بإحكام؟</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Does each plate lie under its grid?</source>
        <translation>والجهاز مطفأ: هل كل سلك موصول بالكامل؟ هل كل صفيحة تحت شبكتها؟</translation>
    </message>
    <message>
        <source>Are the batteries fresh? Four alkaline cells last about three sessions.</source>
        <translation>هل البطاريات جديدة؟ أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</translation>
    </message>
    <message>
        <source>Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>هل ماؤك قليل الأملاح جدًا؟ إنه يوصّل التيار بشكل سيئ. اسأل ممرضتك أو من وصف لك العلاج عمّا تفعل، ولا تُضف شيئًا من تلقاء نفسك، حتى الملح.</translation>
    </message>
</context>
<context>
    <name>TechniquePage</name>
    <message>
        <source>Check how you do it</source>
        <translation>راجع طريقتك</translation>
    </message>
    <message>
        <source>Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.</source>
        <translation>راجع هذا قبل جلستك القادمة. كثيرًا ما يكون أمر صغير سبب عدم الفائدة أو عدم ارتفاع التيار.</translation>
    </message>
</context>
<context>
    <name>TimePick</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1، مختار</translation>
    </message>
</context>
<context>
    <name>TodayHeader</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>ملخص لطبيبك</translation>
    </message>
    <message>
        <source>Change person, now %1</source>
        <translation>تغيير الشخص، الآن %1</translation>
    </message>
</context>
<context>
    <name>TravelPage</name>
    <message>
        <source>Taking the kit along</source>
        <translation>اصطحاب الأدوات</translation>
    </message>
    <message>
        <source>Before you leave</source>
        <translation>قبل السفر</translation>
    </message>
    <message>
        <source>Dry the kit completely before you pack it.</source>
        <translation>جفف الأدوات تمامًا قبل أن تحزمها.</translation>
    </message>
    <message>
        <source>Take the batteries out, and pack new ones.</source>
        <translation>أخرج البطاريات وخذ معك بطاريات جديدة.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>خذ معه تعليمات الجهاز لمن يسأل عند الحدود.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>حيث تقيم</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>جهّز كما في البيت: يدان جافتان، والسلكان والجهاز بعيدًا عن الماء، ولا شيء من المعدن تحت الحوضين.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>يختلف الماء من مكان إلى آخر. ارفع أبطأ مما في البيت، واعتمد على المقياس.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>الماء القليل الأملاح جدًا يوصّل التيار بشكل سيئ. اسأل ممرضتك أو من وصف لك العلاج عمّا تفعل، ولا تُضف شيئًا من تلقاء نفسك، حتى الملح.</translation>
    </message>
    <message>
        <source>The current will not rise</source>
        <translation>التيار لا يرتفع</translation>
    </message>
</context>
<context>
    <name>TroubleSheet</name>
    <message>
        <source>That could not be saved</source>
        <translation>تعذّر الحفظ</translation>
    </message>
    <message>
        <source>What was recorded before is safe. Make room on the phone or restart the app, then try again.</source>
        <translation>ما دُوّن من قبل سليم. وفّر مساحة على الهاتف أو أعد تشغيل التطبيق ثم حاول مجددًا.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
</context>
<context>
    <name>WeeksBars</name>
    <message>
        <source>Damp days a week</source>
        <translation>أيام رطبة في الأسبوع</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>الرطوبة عبر الزمن، %1</translation>
    </message>
    <message>
        <source>A week with three check-ins or more draws a bar here.</source>
        <translation>كل أسبوع فيه ثلاثة تسجيلات أو أكثر يرسم هنا عمودًا.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.</source>
        <translation>الغامق: أيام مبتلّة أو تقطر. الفاتح: أيام نديّة. العلامات في الأسفل جلساتك.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>الغامق: أيام مبتلّة أو تقطر. الفاتح: أيام نديّة.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>الوزن</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>قبل، بالملليغرام</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>بعد، بالملليغرام</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>لا يمكن أن يقل الوزن بعده؛ زن مرة أخرى.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>الدقائق</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>%1 mg a minute</source>
        <translation>%1 ملغ في الدقيقة</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>زِن ورقة، وضعها على الجلد خمس دقائق، ثم زِنها ثانية. يلزم ميزان يُظهر الملليغرام.</translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Welcome to Firstdew</source>
        <translation>مرحبًا بك في Firstdew</translation>
    </message>
    <message>
        <source>Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.</source>
        <translation>يرشدك Firstdew في علاج تعرّق اليدين أو القدمين أو الإبطين بماء الصنبور وتيار صغير. ويخبرك متى تحين الجلسة التالية.</translation>
    </message>
    <message>
        <source>Move from another phone</source>
        <translation>الانتقال من هاتف آخر</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Why?</source>
        <translation>لماذا؟</translation>
    </message>
    <message>
        <source>How long your dry spells last</source>
        <translation>كم تدوم فترات الجفاف لديك</translation>
    </message>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
            <numerusform>محسوب من فترات الجفاف في يومياتك، وعددها %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>ما زال مستمرًا أو انتهى بجلسة والجلد جاف: %1.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>هذا تقدير من تدويناتك وليس تشخيصًا. كلام طبيبك هو المعتمد.</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>لا توقّع بعد. يبدأ بعد دورة مكتملة ونحو أسبوعين من التسجيل.</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>نسبة الفترات التي ما زالت جافة</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>تُحسب فترة رطبة واحدة مثل %1 من الجلسات. لذلك يحين وقت التجديد %2، أو أبكر من دون تسجيلات.</translation>
    </message>
    <message>
        <source>The curve tells how many spells last longer than so many days. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>يبيّن المنحنى كم من الفترات يدوم أكثر من عدد الأيام هذا. يضم النطاق الداخلي النصف الأوسط منها، والخارجي أربعًا من كل خمس. الأشرطة: أحدث فتراتك؛ مفرّغة حيث وقع التغيّر بين تسجيلين، وبسهم حيث جاءت جلسة والجلد ما زال جافًا أو ما زالت الفترة مستمرة. الأشرطة الباهتة: تحت علاج آخر.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>غير محسوبة، تحت علاج آخر: %1.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>الأيام القادمة</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>من بين عشرين يومًا كهذا، هذا عدد الأيام التي تعود فيها الرطوبة حتى ذلك الحين إن لم تسبقها جلسة.</translation>
    </message>
    <message>
        <source>How the forecasts have done</source>
        <translation>مدى صحة التوقعات</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>أقل</translation>
    </message>
    <message>
        <source>More</source>
        <translation>المزيد</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>الجلسة</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>اليوميات</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>الخطة</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>اليدان</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>القدمان</translation>
    </message>
    <message>
        <source>Armpits</source>
        <translation>الإبطان</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>جاف</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>رطب</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>مبلل</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>يقطر</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>حر</translation>
    </message>
    <message>
        <source>Exertion</source>
        <translation>مجهود</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>توتر</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>مرض</translation>
    </message>
    <message>
        <source>Direct current</source>
        <translation>تيار مستمر</translation>
    </message>
    <message>
        <source>Pulsed current</source>
        <translation>تيار نبضي</translation>
    </message>
    <message>
        <source>Hand session</source>
        <translation>جلسة اليدين</translation>
    </message>
    <message>
        <source>Foot session</source>
        <translation>جلسة القدمين</translation>
    </message>
    <message>
        <source>Hand and foot session</source>
        <translation>جلسة يد وقدم</translation>
    </message>
    <message>
        <source>Pad session</source>
        <translation>جلسة الوسائد</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>لم يبدأ</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>الدورة الأولى</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>المراجعة</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>يبقى جافًا</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>أول الندى</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>عاد التعرق</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>متوقف مؤقتًا</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>سليم</translation>
    </message>
    <message>
        <source>Redness</source>
        <translation>احمرار</translation>
    </message>
    <message>
        <source>Itching</source>
        <translation>حكة</translation>
    </message>
    <message>
        <source>Blister</source>
        <translation>فقاعة</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>حرق</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>لم يُحس بشيء</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>مريح</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>قوي</translation>
    </message>
    <message>
        <source>Unpleasant</source>
        <translation>مزعج</translation>
    </message>
    <message>
        <source>Painful</source>
        <translation>مؤلم</translation>
    </message>
    <message>
        <source>Seven sessions in four weeks</source>
        <translation>سبع جلسات في أربعة أسابيع</translation>
    </message>
    <message>
        <source>Three a week for four weeks</source>
        <translation>ثلاثة أسبوعيًا لأربعة أسابيع</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>خمسة أسبوعيًا لأسبوعين</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>بوصفة</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>هل أنتِ حامل أو قد تكونين حاملًا؟</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>هل لديك منظم قلب أو مزيل رجفان أو أي زرعة تعمل بالكهرباء؟</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>هل لديك معدن في عظم أو مفصل؟</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>هل لديك اضطراب في نظم القلب أو صرع؟</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>هل لديك حاليًا ورم أو جلطة دموية؟</translation>
    </message>
    <message>
        <source>Have you lost feeling in the skin, or do you have a nerve disease there?</source>
        <translation>هل فقدت الإحساس في الجلد أو لديك مرض أعصاب هناك؟</translation>
    </message>
    <message>
        <source>Is there eczema or inflamed skin where the treatment goes?</source>
        <translation>هل هناك إكزيما أو جلد ملتهب في موضع العلاج؟</translation>
    </message>
    <message>
        <source>Is there a wound too large to cover?</source>
        <translation>هل هناك جرح أكبر من أن يُغطى؟</translation>
    </message>
    <message>
        <source>Do you wear fixed dental braces?</source>
        <translation>هل تضع تقويم أسنان ثابتًا؟</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>الحمل</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>زرعة كهربائية</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>زرعة معدنية</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>اضطراب نظم القلب أو الصرع</translation>
    </message>
    <message>
        <source>a tumour or blood clot</source>
        <translation>ورم أو جلطة دموية</translation>
    </message>
    <message>
        <source>loss of feeling</source>
        <translation>فقدان الإحساس</translation>
    </message>
    <message>
        <source>an age under five</source>
        <translation>عمر دون الخامسة</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>عمر دون الثامنة عشرة</translation>
    </message>
    <message>
        <source>eczema or inflamed skin</source>
        <translation>إكزيما أو جلد ملتهب</translation>
    </message>
    <message>
        <source>a large wound</source>
        <translation>جرح كبير</translation>
    </message>
    <message>
        <source>fixed braces</source>
        <translation>تقويم أسنان ثابت</translation>
    </message>
    <message>
        <source>Common practice, adults</source>
        <translation>الممارسة الشائعة، بالغون</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>الممارسة الشائعة، أطفال</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>اختيارنا الحذر، أطفال</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>حدّده %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>جهازك لا يعطيه</translation>
    </message>
    <message>
        <source>Nothing to do now</source>
        <translation>لا شيء مطلوب الآن</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 اليوم</translation>
    </message>
    <message>
        <source>First dew: top up now</source>
        <translation>أول الندى: جدّد الآن</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>حان وقت التجديد</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>راقب الأمر</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>حان وقت دورة جديدة</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>اكتملت الدورة</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>تحدث مع طبيبك</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>لا جلسة حاليًا</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>لم تُعدّ دورة أولى بعد.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for today.</source>
        <translation>الجلسة %1 من %2 في الدورة الأولى مخططة اليوم.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>الجلسة %1 من %2 في الدورة الأولى مخططة: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة، الأيام: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course no longer fits its time.</source>
        <translation>لم تعد الدورة تتسع لوقتها.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
            <numerusform>اكتملت كل جلسات الدورة، وعددها %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>تمت جلسة اليوم.</translation>
    </message>
    <message>
        <source>You usually stay dry %1 to %2 days. Today is day %3.</source>
        <translation>تبقى جافًا عادةً من %1 إلى %2 يومًا. اليوم هو اليوم %3.</translation>
    </message>
    <message>
        <source>You usually stay dry %1 to %2 days.</source>
        <translation>تبقى جافًا عادةً من %1 إلى %2 يومًا.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
            <numerusform>الأيام بلا قيد: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has cleared it.</source>
        <translation>أجبت بنعم عن: %1. لا جلسة حتى يسمح بها طبيب.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>بسبب %1، اسأل طبيبًا أولًا ودوّن من قال نعم.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
            <numerusform>الأيام منذ آخر إجابة عن الأسئلة الصحية: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>لم تُجب عن الأسئلة الصحية بعد.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>جهازك يعطي تيارًا مستمرًا فقط، ولا يجوز استعماله للإبطين.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>لم يتحسن الإزعاج. هناك علاجات أخرى؛ ويمكن لطبيبك أن ينصحك.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>تحسن الإزعاج درجة واحدة.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>تحسن الإزعاج درجتين أو أكثر.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>أوقفته مؤقتًا.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>أجّلته إلى هذا المساء.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>أجّلته إلى: %1.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>اخترت ألا تجدّد هذه المرة.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1%</translation>
    </message>
    <message>
        <source>today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>أمس</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>غدًا</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format</comment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <comment>date format</comment>
        <translation>dddd، d MMMM</translation>
    </message>
    <message>
        <source>%1 mA</source>
        <translation>⁦%1 mA⁩</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format</comment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>كلتا اليدين</translation>
    </message>
    <message>
        <source>Both feet</source>
        <translation>كلتا القدمين</translation>
    </message>
    <message>
        <source>One hand with one foot</source>
        <translation>يد مع قدم</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>الجانب الأيمن</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>الجانب الأيسر</translation>
    </message>
    <message>
        <source>I have a hand free</source>
        <translation>لدي يد حرة</translation>
    </message>
    <message>
        <source>Somebody helps me</source>
        <translation>يساعدني شخص آخر</translation>
    </message>
    <message>
        <source>Both hands under water</source>
        <translation>كلتا اليدين تحت الماء</translation>
    </message>
    <message>
        <source>You tap each step yourself.</source>
        <translation>تلمس أنت عند كل خطوة.</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>لا استجابة</translation>
    </message>
    <message>
        <source>good response</source>
        <translation>استجابة جيدة</translation>
    </message>
    <message>
        <source>strong response</source>
        <translation>استجابة قوية</translation>
    </message>
    <message>
        <source>Is the person treated under five years old?</source>
        <translation>هل عمر الشخص المعالَج دون الخامسة؟</translation>
    </message>
    <message>
        <source>Is the person treated under eighteen years old?</source>
        <translation>هل عمر الشخص المعالَج دون الثامنة عشرة؟</translation>
    </message>
    <message>
        <source>Lowered for the size of the treated skin</source>
        <translation>مخفَّض بحسب مساحة الجلد المعالَج</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>الإبطان يُعالجان بالتيار النبضي فقط</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>إذا عولج الآن فتكفي عادةً جلسة أو جلستان.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>رطوبة أثناء الراحة، دُوّنت: %1.</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>دُوّنت رطوبة (%1)، وقد يفسرها ذلك اليوم. تحقق ثانية غدًا.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>رطوبة مرتين متتاليتين، آخرهما: %1.</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>تعرق كامل أثناء الراحة، دُوّن: %1. يحتاج عادةً إلى دورة جديدة.</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1: جلسة اليوم</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1: حان وقت التجديد</translation>
    </message>
    <message>
        <source>%1: first dew</source>
        <translation>%1: أول الندى</translation>
    </message>
    <message>
        <source>%1: look at the skin</source>
        <translation>%1: انظر إلى الجلد</translation>
    </message>
    <message>
        <source>New batteries soon</source>
        <translation>بطاريات جديدة قريبًا</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>حان وقت الأسئلة الصحية</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1: كم يزعجك؟</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>اعرضه على طبيبك</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>حان وقت نسخة احتياطية</translation>
    </message>
    <message>
        <source>The first course works when it is kept to.</source>
        <translation>تنجح الدورة الأولى إذا التُزم بها.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>قبل أن تعود الرطوبة.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>في اليوم التالي للجلسة: هل من احمرار أو فقاعة أو حرق؟</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>تكفي بطاريات الجهاز لنحو جلسة واحدة أخرى.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>قبل الجلسة القادمة، كما في كل أربعة أسابيع.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>سؤال واحد وأربعة أجوبة.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>الملخص على بُعد لمستين.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>نسخة مشفرة تُحفظ حيث تختار.</translation>
    </message>
    <message>
        <source>Check list</source>
        <translation>قائمة التحقق</translation>
    </message>
    <message>
        <source>Hands in</source>
        <translation>أدخل اليدين</translation>
    </message>
    <message>
        <source>Swap polarity</source>
        <translation>تبديل القطبية</translation>
    </message>
    <message>
        <source>Change side</source>
        <translation>تغيير الجانب</translation>
    </message>
    <message>
        <source>Lift out</source>
        <translation>الإخراج</translation>
    </message>
    <message>
        <source>Machine off, current at zero. Confirm the list.</source>
        <translation>الجهاز مطفأ والتيار عند الصفر. أكّد القائمة.</translation>
    </message>
    <message>
        <source>Raise the current slowly to a comfortable level.</source>
        <translation>ارفع التيار ببطء إلى مستوى مريح.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>اثبت. يبقى كل شيء تحت الماء.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero.</source>
        <translation>اخفض التيار ببطء إلى الصفر.</translation>
    </message>
    <message>
        <source>Current at zero? Swap the two leads.</source>
        <translation>هل التيار عند الصفر؟ بدّل السلكين.</translation>
    </message>
    <message>
        <source>Current at zero? Flip the polarity switch.</source>
        <translation>هل التيار عند الصفر؟ اقلب مفتاح القطبية.</translation>
    </message>
    <message>
        <source>Current at zero? Change to the other side.</source>
        <translation>هل التيار عند الصفر؟ انتقل إلى الجانب الآخر.</translation>
    </message>
    <message>
        <source>Machine off, then lift out. Dry skin and kit.</source>
        <translation>أطفئ الجهاز ثم أخرج. جفف الجلد والأدوات.</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>نال هذا الجلد جلسته اليوم. دعه يرتاح؛ الجلسة التالية غدًا على الأقرب.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>حان وقت الأسئلة الصحية. اترك الجهاز مطفأ حتى تُجيب عنها.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has cleared it.</source>
        <translation>يمنع ذلك أحد الأسئلة الصحية. اترك الجهاز مطفأ حتى يسمح به طبيب.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>جهازك لا يعطي هذا التيار. اختر ما يعطيه.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>لا مقياس يشير إلى ذلك. اقرأه ثانية؛ وعند الشك اخفض التيار.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>قد يكون التيار ما زال جاريًا. اخفضه إلى الصفر أولًا.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>Firstdew ليس جهازًا طبيًا ولا يشخّص. اتبع تعليمات جهازك والقواعد المحلية وطبيبك.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>لا تتجاوز الحدود أبدًا. قد تشعر بوخز، ولا يجوز أن تتألم. إذا آلمك فاخفض التيار وتوقف.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>لا جلسة ما دام أحد الأسئلة الصحية يمنعها.</translation>
    </message>
    <message>
        <source>Children only with medical advice and an adult beside them.</source>
        <translation>الأطفال فقط بنصيحة طبية وبجانبهم شخص بالغ.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>حروق أو فقاعات أو إغماء أو خفقان: توقف واطلب المساعدة.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>أبعد الأسلاك والماء عن كهرباء الشبكة.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>Running session</source>
        <translation>جلسة جارية</translation>
    </message>
    <message>
        <source>May come late: this phone does not let them come to the minute.</source>
        <translation>قد تتأخر: هذا الهاتف لا يسمح بوصولها في دقيقتها.</translation>
    </message>
    <message>
        <source>While your phone was off</source>
        <translation>بينما كان هاتفك مغلقًا</translation>
    </message>
    <message>
        <source>There were reminders. Open Firstdew to see what matters now.</source>
        <translation>كانت هناك تذكيرات. افتح Firstdew لترى ما المهم الآن.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date format</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>This is no back-up, or it was cut short or changed. Take another one.</source>
        <translation>هذه ليست نسخة احتياطية، أو أنها مقطوعة أو مغيَّرة. خذ غيرها.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>لا مساحة متبقية؛ لم يُكتب شيء. وفّر مساحة وحاول ثانية.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>تعذرت قراءة ملف أو كتابته. تحقق من وجوده ومن توفر مساحة.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>هذا الملف أكبر من أن يكون الصحيح.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>برنامج آخر يستعمل السجل. أغلقه وحاول ثانية.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep the file and restore a back-up.</source>
        <translation>السجل تالف. احتفظ بالملف واستعد نسخة احتياطية.</translation>
    </message>
    <message>
        <source>This is from a newer Firstdew. Update the app first.</source>
        <translation>هذا من إصدار أحدث من Firstdew. حدّث التطبيق أولًا.</translation>
    </message>
    <message>
        <source>This file is not what is needed here (%1). Ask whoever made it.</source>
        <translation>هذا الملف ليس المطلوب هنا (%1). اسأل من أعدّه.</translation>
    </message>
    <message>
        <source>It does not open with this passphrase, or is damaged. Try again, or take another back-up.</source>
        <translation>لا تُفتح بعبارة المرور هذه أو أنها تالفة. حاول ثانية أو خذ نسخة أخرى.</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>الطبيب</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>الممرض</translation>
    </message>
    <message>
        <source>Half of your dry spells last longer than %1 days; four in five are over between day %2 and day %3.</source>
        <translation>نصف فترات الجفاف لديك يدوم أكثر من %1 يومًا؛ وأربع من كل خمس تنتهي بين اليوم %2 واليوم %3.</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>أول مرة هنا: ابدأ منخفضًا واعتمد على ما هو مريح.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>كان %1 مريحًا في المرة السابقة.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>كان %1 مزعجًا في المرة السابقة، لذا أقل.</translation>
    </message>
    <message>
        <source>This is the limit.</source>
        <translation>هذا هو الحد.</translation>
    </message>
    <message>
        <source>Pulsed current is felt less; try it, if your machine has it.</source>
        <translation>التيار النبضي يُحس به أقل؛ جرّبه إن كان جهازك يعطيه.</translation>
    </message>
    <message>
        <source>The same level as last time, until it was comfortable.</source>
        <translation>المستوى نفسه كالمرة السابقة، إلى أن يكون مريحًا.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>قد يكون التيار المستمر أفضل الآن؛ اسأل الشخص البالغ أو الممرض الذي يساعد.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 دقيقة</translation>
    </message>
    <message>
        <source>Limit %1. %2.</source>
        <translation>الحد %1. %2.</translation>
    </message>
    <message>
        <source>Not possible. %1.</source>
        <translation>غير ممكن. %1.</translation>
    </message>
    <message>
        <source>Aim for about %1.</source>
        <translation>الهدف نحو %1.</translation>
    </message>
    <message>
        <source>%1 min of current, about %2 min in all</source>
        <translation>%1 دقيقة من التيار، نحو %2 دقيقة إجمالًا</translation>
    </message>
    <message>
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>خلعت الحلي والساعة والأقراط الثاقبة (لا يلزم فوق الرقبة)</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>الجروح تحت طبقة رقيقة من الفازلين، على الجلد المجروح فقط</translation>
    </message>
    <message>
        <source>No antiperspirant with aluminium there for 24 hours</source>
        <translation>لا مضاد تعرق فيه ألومنيوم هناك منذ 24 ساعة</translation>
    </message>
    <message>
        <source>Not shaved there for three days</source>
        <translation>لا حلاقة هناك منذ ثلاثة أيام</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>كل صفيحة تحت شبكتها؛ لا يلمس الجلد الصفيحة أبدًا</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>الوسائد مشبعة بالماء ومثبتة بإحكام</translation>
    </message>
    <message>
        <source>Machine off, current at zero, leads in</source>
        <translation>الجهاز مطفأ والتيار عند الصفر والأسلاك موصولة</translation>
    </message>
    <message>
        <source>Batteries in</source>
        <translation>البطاريات في مكانها</translation>
    </message>
    <message>
        <source>Ready %1 from %2: %3</source>
        <translation>جاهز %1 من الساعة %2: %3</translation>
    </message>
    <message>
        <source>All checked, begin</source>
        <translation>تحققت من كل شيء، ابدأ</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>رُفع ثانية</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>إنه مريح</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>تغيّر الجانب</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>المرحلة تنتظر عند الصفر. ارفع ثانية حين تكون مستعدًا.</translation>
    </message>
    <message>
        <source>The session starts again from its beginning. Machine off, current at zero; confirm the list.</source>
        <translation>تبدأ الجلسة من أولها من جديد. أطفئ الجهاز، والتيار عند الصفر؛ ثم أكّد القائمة.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>Phase %1 of %2</source>
        <translation>المرحلة %1 من %2</translation>
    </message>
    <message>
        <source>%1 min %2 s left</source>
        <translation>بقي %1 دقيقة و%2 ثانية</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>لا شيء بعد</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>لا تستخدم لتوليد التيار إلا جهازًا صُنع لهذا العلاج، مع ما جاء معه.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 letters.</source>
        <translation>كلمة السر هذه طويلة جدًا. اختر واحدة أقل من 250 حرفًا.</translation>
    </message>
    <message>
        <source>%1 min left in all</source>
        <translation>بقي %1 دقيقة إجمالًا</translation>
    </message>
    <message>
        <source>Raise slowly</source>
        <translation>ارفع ببطء</translation>
    </message>
    <message>
        <source>Hold still</source>
        <translation>اثبت دون حركة</translation>
    </message>
    <message>
        <source>Lower to zero</source>
        <translation>اخفض إلى الصفر</translation>
    </message>
    <message>
        <source>The last session was not finished, so the same level again.</source>
        <translation>لم تكتمل الجلسة السابقة، لذا المستوى نفسه مرة أخرى.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>تهيّج الجلد بعد %1، لذا أقل بوضوح.</translation>
    </message>
    <message>
        <source>It has been a while since your last session here, so start lower than %1.</source>
        <translation>مضى وقت منذ جلستك السابقة هنا، لذا ابدأ بأقل من %1.</translation>
    </message>
    <message>
        <source>Switch flipped</source>
        <translation>قلبتُ المفتاح</translation>
    </message>
    <message>
        <source>Pads exchanged</source>
        <translation>بدّلتُ اللبّادتين</translation>
    </message>
    <message>
        <source>Leads swapped</source>
        <translation>بدّلتُ السلكين</translation>
    </message>
    <message>
        <source>Start at %1. Current can creep up, so leave %2 to spare at first.</source>
        <translation>ابدأ عند %1. قد يرتفع التيار شيئًا فشيئًا من نفسه، لذا اترك في البداية هامشًا قدره %2.</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>فحصتُ جلدي: لا احمرار جديد ولا بثرة مائية ولا حرق</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 ml in each tray</source>
        <translation>ماء صنبور دافئ، نحو %1 مل في كل حوض</translation>
    </message>
    <message>
        <source>Hand trays on a table that is not metal</source>
        <translation>حوضا اليدين على طاولة غير معدنية</translation>
    </message>
    <message>
        <source>Foot trays on the floor</source>
        <translation>حوضا القدمين على الأرض</translation>
    </message>
    <message>
        <source>My helper stays beside me the whole session</source>
        <translation>من يساعدني يبقى بجانبي طوال الجلسة</translation>
    </message>
    <message>
        <source>Remote control within reach of my hands in the water, placed as its maker says</source>
        <translation>جهاز التحكم عن بعد في متناول يديّ وهما في الماء، وموضوع كما تقول الشركة الصانعة</translation>
    </message>
    <message>
        <source>Meter at zero: hands in again</source>
        <translation>المقياس عند الصفر: أُدخل يديّ مرة أخرى</translation>
    </message>
    <message>
        <source>On, at zero, direct current</source>
        <translation>مشغّل، عند الصفر، تيار مستمر</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>مشغّل، عند الصفر، ضوء التيار النبضي مضاء</translation>
    </message>
    <message>
        <source>At zero, hands out and dry</source>
        <translation>عند الصفر، ويداي خارج الماء وجافتان</translation>
    </message>
    <message>
        <source>Current is at zero</source>
        <translation>التيار عند الصفر</translation>
    </message>
    <message>
        <source>A pad came off</source>
        <translation>انفصلت لبّادة</translation>
    </message>
    <message>
        <source>I took them out</source>
        <translation>أخرجتهما من الماء</translation>
    </message>
    <message>
        <source>It kept running, in direct current</source>
        <translation>ظل يعمل، بالتيار المستمر</translation>
    </message>
    <message>
        <source>It kept running, pulsed light on</source>
        <translation>ظل يعمل، وضوء التيار النبضي مضاء</translation>
    </message>
    <message>
        <source>Any small cuts? Cover them with a thin layer of petroleum jelly again.</source>
        <translation>هل توجد جروح صغيرة؟ غطِّها مرة أخرى بطبقة رقيقة من الفازلين.</translation>
    </message>
    <message>
        <source>It is enough for today. What you did is kept.</source>
        <translation>هذا يكفي لليوم. ما أنجزته محفوظ.</translation>
    </message>
    <message>
        <source>That was more than ten minutes ago, so this session is over. What you did is kept.</source>
        <translation>مضى على ذلك أكثر من عشر دقائق، لذا انتهت هذه الجلسة. ما أنجزته محفوظ.</translation>
    </message>
    <message>
        <source>Another version of Firstdew led this session. It cannot go on from there. What you did is kept. Machine off now.</source>
        <translation>بدأت هذه الجلسة بإصدار آخر من Firstdew. لا يمكن متابعتها من حيث توقفت. ما أنجزته محفوظ. أطفئ الجهاز الآن.</translation>
    </message>
    <message>
        <source>The session goes on. Machine off, current at zero; confirm the list again.</source>
        <translation>تستمر الجلسة. أطفئ الجهاز، والتيار عند الصفر؛ ثم أكّد القائمة مرة أخرى.</translation>
    </message>
    <message>
        <source>A blister or burn was noted there. Leave the machine off until a clinician has looked at it.</source>
        <translation>دُوّنت هناك بثرة مائية أو حرق. اترك الجهاز مطفأ حتى يفحص الموضعَ مختص صحي (طبيب أو ممرض).</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>أدخل تاريخ الميلاد أولًا. فحد التيار يتوقف عليه.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>ورقة الرعاية تصف هنا التيار الآخر. اختر ذلك التيار.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>إذا كانت كلتا يديك في الماء فأنت تحتاج إلى جهاز تحكم عن بعد، ولم يُدوَّن أي واحد لجهازك. اطلب من شخص أن يبقى بجانبك.</translation>
    </message>
    <message>
        <source>A child is never alone with both hands in the water. Somebody stays beside the child.</source>
        <translation>لا يُترك طفل وحده أبدًا وكلتا يديه في الماء. يبقى شخص بجانب الطفل.</translation>
    </message>
    <message>
        <source>Choose who can tap the phone.</source>
        <translation>اختر من يستطيع لمس الهاتف.</translation>
    </message>
    <message>
        <source>It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.</source>
        <translation>هذا يكفي لليوم. اترك الجهاز مطفأ؛ الجلسة التالية غدًا على الأقرب.</translation>
    </message>
    <message>
        <source>Machine off. The session starts again once you confirm the list.</source>
        <translation>أطفئ الجهاز. تبدأ الجلسة من جديد حين تؤكّد القائمة.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask somebody to stay beside you.</source>
        <translation>إذا كانت كلتا يديك في الماء فأنت تعتمد على ما تسمعه، ولا يمكن تجهيز الصوت. اطلب من شخص أن يبقى بجانبك.</translation>
    </message>
    <message>
        <source>They stay beside you the whole session, tap and enter the readings.</source>
        <translation>يبقى من يساعدك بجانبك طوال الجلسة، ويلمس الشاشة ويُدخل القراءات.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote. For the swap you take your hands out and tap.</source>
        <translation>ترفع التيار وتخفضه بجهاز التحكم عن بعد. عند التبديل تُخرج يديك وتلمس الشاشة.</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>ألم</translation>
    </message>
    <message>
        <source>Kept low until the size of the pads is entered under Machine and kit</source>
        <translation>يبقى منخفضًا حتى يُدخَل مقاس اللبّادات في «الجهاز واللوازم»</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>وصف %1 التيار الآخر</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1، تاريخ التدوين: %2. لا جلسة هنا حتى يفحص الموضعَ مختص صحي (طبيب أو ممرض).</translation>
    </message>
    <message>
        <source>Enter the date of birth first: the limit of the current depends on it.</source>
        <translation>أدخل تاريخ الميلاد أولًا: فحد التيار يتوقف عليه.</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>شغّل الجهاز</translation>
    </message>
    <message>
        <source>Hands out</source>
        <translation>أخرِج اليدين</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and flip the polarity switch.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى واقلب مفتاح القطبية.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى، وضع اليمنى مكان اليسرى واليسرى مكان اليمنى.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>هل التيار عند الصفر؟ بلّل اللبّادتين جيدًا مرة أخرى وبدّل السلكين.</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, set to direct current?</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، والجهاز مضبوط على التيار المستمر؟</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, light for pulsed current on?</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، وضوء التيار النبضي مضاء؟</translation>
    </message>
    <message>
        <source>Put your hands in now and keep them still.</source>
        <translation>أدخل يديك الآن وأبقهما ساكنتين.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote.</source>
        <translation>ارفع التيار ببطء بجهاز التحكم عن بعد.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>اثبت. تبقى اللبّادتان في مكانهما.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero with the remote.</source>
        <translation>اخفض التيار ببطء إلى الصفر بجهاز التحكم عن بعد.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them, machine off, and tap.</source>
        <translation>هل المقياس عند الصفر؟ عندئذ فقط أخرِج يديك. جففهما، وأطفئ الجهاز، والمس الشاشة.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them and tap.</source>
        <translation>هل المقياس عند الصفر؟ عندئذ فقط أخرِج يديك. جففهما والمس الشاشة.</translation>
    </message>
    <message>
        <source>Machine off, then take the pads off. Dry skin and kit.</source>
        <translation>أطفئ الجهاز ثم انزع اللبّادتين. جفف الجلد والأدوات.</translation>
    </message>
    <message>
        <source>Dry skin and kit.</source>
        <translation>جفف الجلد والأدوات.</translation>
    </message>
    <message>
        <source>Watch your skin above %1.</source>
        <translation>راقب جلدك فوق %1.</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>أول ثلاث جلسات لك هنا تسير خطوة بخطوة.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>مضت أربعة أسابيع أو أكثر. لنسِر خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>في المرة الماضية لم يكن شيء ما على ما يرام. لنسِر خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>تغيّر جهازك. لنسِر خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>أول جلسة لك وكلتا يديك في الماء تسير خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>الهدف %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>لم يتغير شيء في صحتي</translation>
    </message>
    <message>
        <source>My skin there is whole: no cut, no new redness, no blister or burn</source>
        <translation>جلدي هناك سليم: لا جرح ولا احمرار جديد ولا فقاعة ولا حرق</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>يعمل، على الصفر، تيار مستمر: ابدأ</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>يعمل، على الصفر، ضوء النبضي مضاء: ابدأ</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>افحص</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>ارفع</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>اثبت</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>اخفض</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>بدّل</translation>
    </message>
    <message>
        <source>Turn down to %1</source>
        <translation>اخفض إلى %1</translation>
    </message>
    <message>
        <source>With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay beside you, or use a pedal or a switch.</source>
        <translation>عند تشغيل قارئ الشاشة لا توقف اللمسة في أي مكان الجلسة. اطلب من أحد البقاء بجانبك، أو استخدم دواسة أو مفتاحًا.</translation>
    </message>
    <message>
        <source>This passphrase is too short. Choose one of at least eight characters.</source>
        <translation>عبارة المرور هذه قصيرة جدًا. اختر عبارة من ثمانية أحرف على الأقل.</translation>
    </message>
    <message>
        <source>This file may be about somebody else: name or birth date differ, or are missing. Nothing was added.</source>
        <translation>قد يخص هذا الملف شخصًا آخر: الاسم أو تاريخ الميلاد مختلف أو غير موجود. لم يُضف شيء.</translation>
    </message>
    <message>
        <source>A file of that name is there already. It was left as it is.</source>
        <translation>يوجد ملف بهذا الاسم بالفعل. تُرك كما هو.</translation>
    </message>
    <message>
        <source>The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was saved. Close Firstdew, put the file back and open it again.</source>
        <translation>نُقل ملف سجلك أو حُذف أو استُبدل وFirstdew مفتوح. لم يُحفظ شيء. أغلق Firstdew وأعد الملف إلى مكانه ثم افتحه من جديد.</translation>
    </message>
    <message>
        <source>This care sheet is dated in the future. Ask for one with the right date.</source>
        <translation>تاريخ هذه الورقة في المستقبل. اطلب ورقة بالتاريخ الصحيح.</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device or system) of any kind?</source>
        <translation>هل لديك لولب (وسيلة أو نظام داخل الرحم) من أي نوع؟</translation>
    </message>
    <message>
        <source>the child</source>
        <translation>الطفل</translation>
    </message>
    <message>
        <source>Could %1 be pregnant?</source>
        <translation>هل من الممكن وجود حمل لدى %1؟</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>هل لدى %1 جهاز تنظيم ضربات القلب أو مزيل رجفان أو أي جهاز كهربائي مزروع آخر؟</translation>
    </message>
    <message>
        <source>Does %1 have metal in a bone or joint?</source>
        <translation>هل لدى %1 معدن في عظم أو مفصل؟</translation>
    </message>
    <message>
        <source>Does %1 have a coil (intrauterine device or system) of any kind?</source>
        <translation>هل لدى %1 لولب (وسيلة أو نظام داخل الرحم) من أي نوع؟</translation>
    </message>
    <message>
        <source>Does %1 have a heart rhythm disorder or epilepsy?</source>
        <translation>هل لدى %1 اضطراب في نظم القلب أو صرع؟</translation>
    </message>
    <message>
        <source>Does %1 have a tumour or a blood clot at present?</source>
        <translation>هل لدى %1 حاليًا ورم أو جلطة دموية؟</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease there?</source>
        <translation>هل فقد جلد %1 الإحساس، أو هل يوجد مرض عصبي هناك؟</translation>
    </message>
    <message>
        <source>Is %1 under five years old?</source>
        <translation>هل عمر %1 أقل من خمس سنوات؟</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>هل عمر %1 أقل من ثماني عشرة سنة؟</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>هل لدى %1 أكزيما أو جلد ملتهب في موضع العلاج؟</translation>
    </message>
    <message>
        <source>Does %1 have a wound too large to cover?</source>
        <translation>هل لدى %1 جرح أكبر من أن يُغطّى؟</translation>
    </message>
    <message>
        <source>Does %1 wear fixed dental braces?</source>
        <translation>هل لدى %1 تقويم أسنان ثابت؟</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>لولب</translation>
    </message>
    <message>
        <source>Wet at rest, noted %1. One report is not enough for a new course.</source>
        <translation>بلل في وقت الراحة، سُجّل %1. تسجيل واحد لا يكفي لبدء دورة جديدة.</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>لا تحسّن بعد</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>تصف ورقة رعايتك تيارًا لا يوجد في جهازك. اسأل من كتبها.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>أدخل أولًا نوع التيار الذي يعطيه جهازك.</translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>قبل أي جلسة من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد جلسة واحدة من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد جلستين من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسات من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسةً من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسة من المبكر القول إنه لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>قل كم يزعجك التعرق الآن، عندها يستطيع التطبيق أن يخبرك هل نفعت الدورة.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>يأتي الجواب مع أولى الجلسات وأسبوع من التسجيلات.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>يأتي الجواب بعد %n تسجيل آخر.</numerusform>
            <numerusform>يأتي الجواب بعد تسجيل واحد (%n).</numerusform>
            <numerusform>يأتي الجواب بعد تسجيلين (%n).</numerusform>
            <numerusform>يأتي الجواب بعد %n تسجيلات أخرى.</numerusform>
            <numerusform>يأتي الجواب بعد %n تسجيلًا آخر.</numerusform>
            <numerusform>يأتي الجواب بعد %n تسجيل آخر.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسة أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل جلسة واحدة (%n).</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل جلستين (%n).</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسات أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسة أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسة أخرى.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>من المبكر القول إن كان ينفع</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>لا ينفع بعد</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>ينفع جزئيًا</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>إنه ينفع</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>أقل من %1</translation>
    </message>
    <message>
        <source>%1 now, %2 before the first session</source>
        <translation>الآن %1، وقبل أول جلسة %2</translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation>الآن %1</translation>
    </message>
    <message>
        <source>Damp days a week: %1.</source>
        <translation>أيام رطبة في الأسبوع: %1.</translation>
    </message>
    <message>
        <source>Bother score: %1 now, %2 before.</source>
        <translation>درجة الإزعاج: الآن %1، وقبل ذلك %2.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>كانت فترات جفافك الأخيرة قصيرة.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>أرِ طبيبك الملخّص. قد تنفع علاجات أخرى.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>كثيرون يحتاجون من 10 إلى 12 جلسة.</translation>
    </message>
    <message>
        <source>There is no code in this picture that can be read. Take it straight from the front, near and in good light.</source>
        <translation>لا يوجد في هذه الصورة رمز يمكن قراءته. التقطها من الأمام مباشرة وعن قرب وفي ضوء جيد.</translation>
    </message>
    <message>
        <source>Waiting at zero</source>
        <translation>في الانتظار عند الصفر</translation>
    </message>
    <message>
        <source>Ends at %1</source>
        <translation>ينتهي عند %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Something to look at today</source>
        <translation>هناك شيء لتطّلع عليه اليوم</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>انتهيت لهذا اليوم</translation>
    </message>
    <message>
        <source>Botulinum injections</source>
        <translation>حقن البوتولينوم</translation>
    </message>
    <message>
        <source>Tablets</source>
        <translation>أقراص</translation>
    </message>
    <message>
        <source>Cream or deodorant</source>
        <translation>كريم أو مزيل عرق</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>شيء آخر</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>treatment: first and last day</comment>
        <translation>%1: من %2 إلى %3</translation>
    </message>
    <message>
        <source>%1: since %2</source>
        <comment>treatment: first day</comment>
        <translation>%1: منذ %2</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now today.</source>
        <translation>فاتتك الجلسة %1 في %2. موعدها الآن اليوم.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>فاتتك الجلسة %1 في %2. موعدها الآن %3.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>لا تضع الخطة أي جلسات (%n) في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة جلسة واحدة (%n) في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة جلستين (%n) في يومين متتاليين.</numerusform>
            <numerusform>تضع الخطة %n جلسات في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة %n جلسة في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة %n جلسة في أيام متتالية.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>مع يوم بينها لا تطول المدة (%n).</numerusform>
            <numerusform>مع يوم بينها تطول المدة يومًا واحدًا (%n) عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة يومين (%n) عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n أيام عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n يومًا عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n يوم عن المخطط.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>ستكون غائبًا في %1.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>ستكون غائبًا من %1 إلى %2.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>قد تعود الرطوبة في هذه المدة. التجديد قبل سفرك يستحق.</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>التجديد قبل السفر</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>أنت غائب الآن. يأتي تذكير الجلسة عند عودتك.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1: جاف أم رطب اليوم؟</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>تكفي نقرة واحدة. أو انقر هنا لفتح Firstdew.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>لم يصل كل شيء. نسختك الاحتياطية كما كانت. حاول مرة أخرى بالملف نفسه.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>الرطوبة بدأت على الأرجح.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>حان التجديد منذ %1.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>قد تصير نديًّا حتى الغد. التجديد الآن يستحق.</translation>
    </message>
    <message>
        <source>By your check-ins so far, the chance that dampness has begun is %1. The curve above knows nothing of them.</source>
        <translation>بحسب تسجيلاتك حتى الآن، احتمال أن تكون الرطوبة قد بدأت %1. المنحنى أعلاه لا يعرفها.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Today&apos;s report did not change it.</source>
        <translation>احتمال أن تكون الرطوبة قد بدأت %1. تسجيل اليوم لم يغيّره.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Before today&apos;s report it was %2.</source>
        <translation>احتمال أن تكون الرطوبة قد بدأت %1. قبل تسجيل اليوم كان %2.</translation>
    </message>
    <message>
        <source>Practice: the phase waits. In a real session you turn it up again when you are ready.</source>
        <translation>تدريب: المرحلة تنتظر. في جلسة حقيقية ترفع ثانية حين تكون مستعدًا.</translation>
    </message>
    <message>
        <source>Stays off</source>
        <translation>يبقى مطفأً</translation>
    </message>
    <message>
        <source>No current</source>
        <translation>بلا تيار</translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقيقة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا دقيقة واحدة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا دقيقتين.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقائق.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقيقة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقيقة.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثانية.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا ثانية واحدة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا ثانيتين.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثوانٍ.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثانية.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثانية.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>لا يمكنك اليوم بدء جلسة حقيقية: %1</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>قل من شاهدها، وضع علامة على ما شوهد.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>هذا فوق الحد %1 هناك. اتفقا على مستوى حتى الحد.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>ابدأ بالمستوى الذي اتفقتم عليه عند التعليم.</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>جلد جاف</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>تعذّر الحفظ هناك. اختر مكانًا آخر أو أفرغ مساحة أولًا.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>أدخل الطول والوزن ليُحسب حجم الجلد هنا أيضًا.</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1 cm², by height and weight.</source>
        <translation>باطن القدم الواحدة يُحسب %1 سم² بحسب الطول والوزن.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1 cm², by height and weight.</source>
        <translation>راحة اليد الواحدة تُحسب %1 سم² بحسب الطول والوزن.</translation>
    </message>
    <message>
        <source>One pad counts as %1 cm², as entered with the machine.</source>
        <translation>اللبّادة الواحدة تُحسب %1 سم² كما أُدخل مع الجهاز.</translation>
    </message>
    <message>
        <source>One pad counts as %1 cm², as on the care sheet.</source>
        <translation>اللبّادة الواحدة تُحسب %1 سم² كما في ورقة الرعاية.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1 cm².</source>
        <translation>لم يُدخل حجم اللبّادات، فتُحسب الواحدة %1 سم².</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>القراءة فوق الحد. اخفض التيار ثم أدخل ما يظهر على المقياس.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>لا يصدر صوت من هذا الجهاز، فلن تسمع الإنذار. شغّل الصوت ثم ابدأ.</translation>
    </message>
    <message>
        <source>less than 1 in %1</source>
        <translation>أقل من 1 من %1</translation>
    </message>
    <message>
        <source>more than %1 in %2</source>
        <translation>أكثر من %1 من %2</translation>
    </message>
    <message>
        <source>about %1 in %2</source>
        <translation>نحو %1 من %2</translation>
    </message>
    <message>
        <source>By %1: %2</source>
        <comment>day, chance</comment>
        <translation>حتى %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n يوم.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من يوم واحد (%n).</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من يومين (%n).</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n أيام.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n يومًا.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n يوم.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>بعد %n تسجيل آخر يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
            <numerusform>بعد تسجيل واحد آخر (%n) يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
            <numerusform>بعد تسجيلين آخرين (%n) يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيلات أخرى يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيلًا آخر يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيل آخر يستطيع التطبيق أن يقول مدى صحة توقعاته.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>التوقعات مناسبة حتى الآن.</translation>
    </message>
    <message>
        <source>The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.</source>
        <translation>لم تسر فترات الجفاف كما كان متوقعًا. لذلك يترك التوقع الآن هامشًا أوسع من الجهتين.</translation>
    </message>
    <message>
        <source>Today&apos;s session was stopped. Most of it was done, so it counts.</source>
        <translation>أُوقفت جلسة اليوم. كان معظمها قد تمّ، لذلك تُحتسب.</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>تم الحفظ.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>تم التراجع.</translation>
    </message>
    <message>
        <source>The alarm is over.</source>
        <translation>انتهى الإنذار.</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>Your dry spells, %1</source>
        <translation>فترات جفافك، %1</translation>
    </message>
    <message>
        <source>Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.</source>
        <translation>أيام الجفاف بعد كل جلسة، الأحدث أخيرًا. رأس مدبَّب: كان جافًّا حين جاءت الجلسة التالية، أو جافّ اليوم.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>يأتي هنا عمود لكل فترة جفاف متى بدأت الدورة.</translation>
    </message>
</context>
<context>
    <name>firstdew::app::Reminding</name>
    <message>
        <source>Later</source>
        <translation>لاحقًا</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>ابدأ</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DampnessChart</name>
    <message>
        <source>Chance</source>
        <translation>الاحتمال</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DrySpellChart</name>
    <message>
        <source>Today, day %1</source>
        <translation>اليوم، اليوم %1</translation>
    </message>
    <message>
        <source>Days since the session</source>
        <translation>الأيام منذ الجلسة</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1: %n يوم جاف</numerusform>
            <numerusform>%1: يوم جاف (%n)</numerusform>
            <numerusform>%1: يومان جافّان (%n)</numerusform>
            <numerusform>%1: %n أيام جافة</numerusform>
            <numerusform>%1: %n يومًا جافًّا</numerusform>
            <numerusform>%1: %n يوم جاف</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>Write down who cleared it, so that the summary can say so.</source>
        <translation>اكتب من سمح به، ليظهر في الملخص.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::DiaryModel</name>
    <message numerus="yes">
        <source>%1: %n day(s)</source>
        <translation>
            <numerusform>%1: %n يوم</numerusform>
            <numerusform>%1: يوم واحد (%n)</numerusform>
            <numerusform>%1: يومان (%n)</numerusform>
            <numerusform>%1: %n أيام</numerusform>
            <numerusform>%1: %n يومًا</numerusform>
            <numerusform>%1: %n من الأيام</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>لم يُسجَّل شيء في هذه الفترة</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n جلسة</numerusform>
            <numerusform>جلسة واحدة (%n)</numerusform>
            <numerusform>جلستان (%n)</numerusform>
            <numerusform>%n جلسات</numerusform>
            <numerusform>%n جلسةً</numerusform>
            <numerusform>%n من الجلسات</numerusform>
        </translation>
    </message>
    <message>
        <source>session</source>
        <translation>جلسة</translation>
    </message>
    <message>
        <source>Week from %1</source>
        <translation>الأسبوع من %1</translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n يوم رطب من %1 مسجل</numerusform>
            <numerusform>يوم رطب واحد (%n) من %1 مسجل</numerusform>
            <numerusform>يومان رطبان (%n) من %1 مسجل</numerusform>
            <numerusform>%n أيام رطبة من %1 مسجل</numerusform>
            <numerusform>%n يومًا رطبًا من %1 مسجل</numerusform>
            <numerusform>%n من الأيام الرطبة من %1 مسجل</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::KeepModel</name>
    <message>
        <source>Save as</source>
        <translation>حفظ باسم</translation>
    </message>
</context>
</TS>
