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
        <translation>برنامج حر برخصة Apache 2.0. الخطان Inter وNoto Sans Arabic برخصة SIL Open Font License 1.1.</translation>
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
    <name>AppLocked</name>
    <message>
        <source>Confirm that it is you</source>
        <translation>أكّد أنك صاحب الهاتف</translation>
    </message>
    <message>
        <source>Firstdew is locked</source>
        <translation>تطبيق Firstdew مقفل</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>تشغيل قفل تطبيق Firstdew أو إيقافه</translation>
    </message>
    <message>
        <source>Open Firstdew</source>
        <translation>فتح Firstdew</translation>
    </message>
    <message>
        <source>Firstdew asks for this phone&apos;s lock before the app lock is switched on or off.</source>
        <translation>يطلب Firstdew قفل هذا الهاتف قبل تشغيل قفل التطبيق أو إيقافه.</translation>
    </message>
    <message>
        <source>Your diary opens once this phone&apos;s lock confirms that it is you.</source>
        <translation>تُفتح يومياتك بعد أن يؤكّد قفل هذا الهاتف أنك صاحبه.</translation>
    </message>
    <message>
        <source>Checking …</source>
        <translation>جارٍ التحقق …</translation>
    </message>
    <message>
        <source>That was not right. Try again.</source>
        <translation>هذا غير صحيح. حاول مرة أخرى.</translation>
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
        <source>This phone did not confirm you. Try again.</source>
        <translation>لم يؤكّد هذا الهاتف هويتك. حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation>تأكيد</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>فتح القفل</translation>
    </message>
</context>
<context>
    <name>AsTable</name>
    <message>
        <source>As a table</source>
        <translation>عرض كجدول</translation>
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
        <translation>لا تُخطَّط أي جلسة في هذه الأيام، وتُعدَّل الدورة حولها. وإذا كان موعد جلسة داعمة سيحل خلالها، عُرضت عليك قبل السفر.</translation>
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
        <translation>قبل الجلسة يجب أن يعرف Firstdew موضع العلاج والجهاز المستعمل وإجاباتك عن الأسئلة الصحية.</translation>
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
        <source>The batteries are nearly empty.</source>
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
        <source>Save in the diary</source>
        <translation>حفظ في اليوميات</translation>
    </message>
    <message>
        <source>Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>اخفض التيار إلى الصفر، وأطفئ الجهاز، ثم أخرِج اليدين أو القدمين من الماء.</translation>
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
        <translation>يهدأ الجلد المتهيّج بالراحة وبمرطّب بسيط. وقد يفيد كريم هيدروكورتيزون خفيف: اسأل الصيدلي.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>لا جلسة أخرى هناك حتى يفحص الموضعَ مختص صحي. إن كانت الإصابة مؤلمة أو كبيرة فاطلب المساعدة.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>ملاحظة (اختيارية)</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>انظر إلى جلدك واذكر حالته.</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>هل علّمك أحد في هذه الجلسة؟</translation>
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
        <translation>كل هذا صحيح</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>ليس تمامًا</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>جهّز الأدوات ثم شغّل الجهاز</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>البطاريات على وشك النفاد. اجعل بطاريات جديدة في متناولك.</translation>
    </message>
    <message>
        <source>Continue</source>
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
        <translation>اسأل مختصًا صحيًا أولًا</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has approved treatment:</source>
        <translation>بسبب ما يلي لا يجوز إجراء أي جلسة حتى يصرّح بها مختص صحي:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>لا تتابع إلا بموافقة مختص صحي على ما يلي:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>الآمن الآن: اترك الجهاز مطفأ. لا ضرر من الانتظار.</translation>
    </message>
    <message>
        <source>A clinician has approved it</source>
        <translation>صرّح به مختص صحي</translation>
    </message>
    <message>
        <source>Who approved it</source>
        <translation>من صرّح به</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>تسجيل ومتابعة</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>فقط إذا وافق طبيب أو ممرض على علم بهذا الأمر وبعلاجك. ويظهر الاسم في الملخص.</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>موضع العلاج</translation>
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
        <source>Continue</source>
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
        <translation>الإحساس مزعج</translation>
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
        <translation>عند الشك: أطفئ الجهاز الآن. إن أُطفئ قبل أقل من عشر دقائق تستمر الجلسة؛ وإلا فإنها تبدأ من جديد أو تنتهي، ويبقى ما أنجزته محفوظًا.</translation>
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
        <translation>أدخل قراءة المقياس، القراءة الحالية %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>المقياس يشير إلى أكثر</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>قراءة المقياس، mA</translation>
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
        <translation>أدخل قراءة المقياس</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>أدخل قراءة المقياس</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>فوق الحد البالغ %1</translation>
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
        <translation>بعد الجلسة الحقيقية تجفف جلدك والأدوات، وتذكر كيف كان الإحساس، وتنظر إلى جلدك.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>تدرّب مرة أخرى</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>إنهاء التدريب</translation>
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
        <translation>مرّ بجلسة كاملة والجهاز مطفأ: كل خطوة وكل صورة وكل كلمة منطوقة. ولا يُسجَّل شيء.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>ما يستغرق دقائق لا يستغرق هنا أي ثانية.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا ثانية واحدة.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا ثانيتين.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثوانٍ.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثانية.</numerusform>
            <numerusform>ما يستغرق دقائق يستغرق هنا %n ثانية.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where</source>
        <translation>موضع العلاج</translation>
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
        <translation>جرّب مستوى الصوت</translation>
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
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>البطاريات على وشك النفاد. اجعل بطاريات جديدة في متناولك.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>ارفع التيار واخفضه بجهاز التحكم عن بعد. ما دامت يداك في الماء، توقف الجلسةَ أيُّ ضغطة زر أو لمسة في أي مكان من الشاشة بالمرفق أو الأنف. عند التبديل: المقياس عند الصفر، أخرِج يديك، جففهما، بدّل، ثم المس الشاشة. الهاتف ينتظرك. وهو لا يرى التيار: راقب المقياس بنفسك.</translation>
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
        <translation>تم الفحص</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>يُسمع صوت خافت طوال الجلسة. إذا توقف، فاخفض التيار إلى الصفر وأطفئ الجهاز.</translation>
    </message>
    <message>
        <source>%1: antiperspirant with aluminium in the last 24 hours?</source>
        <translation>%1: هل استُعمل مضاد تعرّق فيه ألمنيوم في آخر 24 ساعة؟</translation>
    </message>
    <message>
        <source>%1: shaved in the last three days?</source>
        <translation>%1: هل حُلق الشعر في آخر ثلاثة أيام؟</translation>
    </message>
    <message>
        <source>%1: small cuts on the skin?</source>
        <translation>%1: هل توجد جروح صغيرة في الجلد؟</translation>
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
        <translation>مرتفع جدًا. اخفض التيار على الجهاز الآن.</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>اخفض إلى %1 أو أقل، ثم أدخل ما يظهر على المقياس.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>تعذّر حفظ الخطوات الأخيرة حتى الآن. الجلسة مستمرة، وتتكرر محاولة الحفظ.</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>لا يمكنك سماع Firstdew الآن. راقب الشاشة أو أوقف الجلسة.</translation>
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
        <translation>كان ذلك سهوًا: متابعة (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>الأسئلة الصحية</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>هل تغيّر شيء؟</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>هل تغيّر شيء منذ آخر إجابة: حمل، زرعات، مرض، الجلد، أدوية القلب، أو أي بند آخر في القائمة؟</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>هذا كل شيء</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>لم يتغيّر شيء</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>تغيّر شيء</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as things are today.</source>
        <translation>أجب عن كل سؤال بشأن الشخص المعالَج بحسب حاله اليوم.</translation>
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
        <translation>إضافة ورقة رعاية</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>استعمال ورقة الرعاية هذه</translation>
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
        <translation>يحوي الرمز ورقة الرعاية كلها. لا تعرضه إلا على من يعالجك.</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>تسري على: %1</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>ورقة الرعاية هذه لا تغيّر شيئًا: إما أنها لديك بالفعل، أو أن ورقة أحدث منها سارية.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>تسمح بأكثر من الحالي. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>أخبرني طبيبي بأنه يُسمح بالمزيد من الآن فصاعدًا</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>من طبيبك: الرمز على ورقة أو على هاتف آخر، أو صورة له، أو ملف. لا يمكن لأي ورقة رعاية أن ترفع الحدود المعتادة.</translation>
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
        <translation>%1: بثرة مائية أو حرق منذ %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1: إجابة صحية تمنع الجلسات منذ %2</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1: انقطعت الدورة الأولى في %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1: لم تنفع الدورة، آخر جلسة %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1: تأخرت الجلسة الداعمة منذ %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>لا خبر منذ %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>الحال جيدة، آخر تسجيل %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>هذا نوع آخر من الملفات أو نسخة احتياطية. إن كانت نسخة احتياطية فاكتب عبارة المرور أدناه.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>عبارة المرور لا تفتحه. اطلب العبارة الصحيحة من صاحبه.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>لا يمكن قراءة هذا المجلد الآن. تأكد من وجوده أو اختر مجلدًا آخر.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>في هذا المجلد ملفات كثيرة جدًا. ضع السجلات في مجلد خاص بها.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>الملف تالف أو وصل ناقصًا. اطلب من صاحبه أن يرسله مرة أخرى.</translation>
    </message>
    <message>
        <source>%1: dry spells shorter since about %2</source>
        <translation>%1: فترات الجفاف أقصر منذ %2 تقريبًا</translation>
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
        <translation>يحتاجون إلى اتصال: %1 من %2.</translation>
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
            <numerusform>تعذرت قراءة %n ملفًا. انظر آخر القائمة.</numerusform>
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
        <translation>عبارة مرور النسخ الاحتياطية</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>لا تُحفظ بعد إغلاق Firstdew.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>فتح بعبارة المرور هذه</translation>
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
    <name>ComparisonCard</name>
    <message>
        <source>Is a shorter session enough?</source>
        <translation>هل تكفي جلسة أقصر؟</translation>
    </message>
    <message>
        <source>You can find out by comparing the two, one dry spell after the other.</source>
        <translation>يمكنك معرفة ذلك بمقارنة الاثنتين، فترة جفاف بعد أخرى.</translation>
    </message>
    <message>
        <source>How it works</source>
        <translation>كيف تسير المقارنة</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>مقارنة من جديد</translation>
    </message>
    <message>
        <source>My prescriber or nurse agrees</source>
        <translation>طبيبي أو التمريض موافق</translation>
    </message>
    <message>
        <source>Start comparing</source>
        <translation>بدء المقارنة</translation>
    </message>
    <message>
        <source>Leave the comparison</source>
        <translation>ترك المقارنة</translation>
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
        <translation>%1، مخطَّطة. المس لنقلها.</translation>
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
        <source>Planned to end by %1. If you miss a session, the rest moves.</source>
        <translation>تنتهي إن أمكن في موعد أقصاه %1. الجلسة الفائتة تنتقل تلقائيًا ويُعاد تخطيط الباقي.</translation>
    </message>
    <message>
        <source>Start again</source>
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
        <translation>الأيام التي تناسبك (بلا اختيار = أي يوم)</translation>
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
        <translation>تكفي الآن جلسات متفرقة ليبقى جلدك جافًا. أما الدورة الكاملة فللبداية، أو عندما يعود التعرّق كاملًا.</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>عندما تتزاحم الجلسات</translation>
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
        <translation>العلامات في الأسفل: جلساتك. المعيّنات في الأعلى: قياسات العرق، بالملغ في الدقيقة.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>العلامات في الأسفل: جلساتك.</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>لا تسجيل في هذه المدة.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>لا تسجيل هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
            <numerusform>تسجيل واحد هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
            <numerusform>تسجيلان هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
            <numerusform>%n تسجيلات هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
            <numerusform>%n تسجيلًا هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
            <numerusform>%n تسجيل هنا. بعد أسبوعين من التسجيل يبدأ الخط يبيّن كم يدوم جفاف جلدك.</numerusform>
        </translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>المعيّنات في الأعلى: قياسات العرق، بالملغ في الدقيقة.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>قراءات المقياس في الجلسات، %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>النقاط: أعلى قراءة مريحة في كل جلسة، بوحدة mA؛ والحلقات حيث كان الإحساس مزعجًا أو مؤلمًا.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>صُحِّح؛ ويُحفظ التسجيل الأول إلى جانبه.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>اكتملت، %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>التيار المريح %1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1 of 4</source>
        <translation>درجة الإزعاج %1 من 4</translation>
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
        <source>Your notes for a day appear here.</source>
        <translation>يظهر هنا ما تسجّله عن اليوم.</translation>
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
    <message>
        <source>Weighing: %1 in %2, %3 a minute</source>
        <translation>قياس العرق: %1 خلال %2، أي %3 في الدقيقة</translation>
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
        <translation>%1، لم يُسجَّل بعد</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>تأجلت إلى هذا المساء. سيأتيك تذكير.</translation>
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
        <translation>أجريت جلسة</translation>
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
        <translation>ثلاثة أشهر</translation>
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
        <translation>قياس العرق بالميزان</translation>
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
        <source>More about this day</source>
        <translation>عرض المزيد وتسجيله</translation>
    </message>
    <message>
        <source>See a day</source>
        <translation>عرض الأيام يومًا بيوم</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>ما يُعرض</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>الموضع</translation>
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
        <translation>إرسال إلى طبيبك</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>علاجات أخرى</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>كل تسجيل في «اليوم» يرسم هنا نقطة. بعد أسبوعين ترى كم يدوم جفاف جلدك وهل ينفع العلاج.</translation>
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
        <translation>موضع العلاج</translation>
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
        <translation>هل اكتملت؟</translation>
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
        <translation>ملاحظة (اختيارية)</translation>
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
        <translation>توضع لبّادتان في وعاء فيه ماء.</translation>
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
        <translation>لبّادة تحت كل ذراع، وكل منهما موصولة بسلك إلى الجهاز.</translation>
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
        <translation>تتبادل اللبّادتان مكانيهما: اليمنى إلى اليسار، واليسرى إلى اليمين.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>تُنزع اللبّادتان من الإبطين.</translation>
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
        <translation>مضاد تعرّق بجانب إبط، مشطوب عليه. وتحته: 24 ساعة.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>شفرة حلاقة بجانب إبط، مشطوب عليها. وتحتها: ثلاثة أيام.</translation>
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
    <message>
        <source>A jug with %1 is poured into a low tray. A line across the tray marks the level.</source>
        <translation>يُصبّ إبريق فيه %1 في حوض منخفض. وخط بعرض الحوض يبيّن مستوى الماء.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Look again</source>
        <translation>البحث مرة أخرى</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>ضع ملفًا ينتهي اسمه بـ %1 في %2 ثم ابحث مرة أخرى.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>اختر ملفًا</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>الملف المختار: %1</translation>
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
        <translation>لمن العلاج؟</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>ما موضع العلاج؟</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>جهازك</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>الأسئلة الصحية</translation>
    </message>
    <message>
        <source>When should we ask?</source>
        <translation>موعد السؤال اليومي</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>الخطوة %1 من %2</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>بعض الإجابات تمنع الجلسات حتى يوافق مختص صحي. تبقى إجاباتك على هذا الهاتف.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>مرة كل يوم يسألك Firstdew عن رطوبة جلدك. تكفي لمستان.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>موعد التسجيل</translation>
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
        <source>Back</source>
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
        <translation>تسليم الورقة</translation>
    </message>
    <message>
        <source>This care sheet is not complete. Go back and fill in what is marked.</source>
        <translation>ورقة الرعاية هذه غير مكتملة. ارجع وأكمل ما عليه علامة.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>عرضها</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>على الشاشة</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>في تطبيق Firstdew لديهم: الخطة، ورقة الرعاية، مسح الرمز.</translation>
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
        <translation>لا جلسة حتى يقول مختص صحي إنها آمنة لك.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>اسأل مختصًا صحيًا أولًا وسجّل اسم من وافق.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>لا يمنع عادةً، لكن أحد المستشفيات يذكره ضمن الموانع. أخبر به من يعالجك.</translation>
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
        <source>You answered yes on %1. That counts until a clinician has approved treatment.</source>
        <translation>الإجابة بتاريخ %1: نعم. ويبقى ذلك ساريًا إلى أن يصرّح به مختص صحي.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>الأسئلة الصحية</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>بعض الإجابات تمنع الجلسات حتى يوافق مختص صحي. تبقى إجاباتك على هذا الهاتف.</translation>
    </message>
    <message>
        <source>Not approved: %1</source>
        <translation>لم يُصرَّح به: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>من قال إنه آمن؟</translation>
    </message>
    <message>
        <source>Record the approval</source>
        <translation>تسجيل التصريح</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>اسم الطبيب أو الممرض. يُحفظ في سجلك.</translation>
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
        <translation>بقي سجلك كما كان.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>نسخة احتياطية</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>ملف واحد مشفّر (OpenPGP) فيه كل شيء. من دون عبارة المرور لا يستطيع أحد فتحه، ولا حتى أنت.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>عبارة المرور</translation>
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
        <translation>عبارة مرور النسخة الاحتياطية</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>يُستبدل الموجود هنا الآن. وتُحفظ نسخة منه.</translation>
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
        <translation>جداول لبرامج جداول البيانات، بصيغة CSV</translation>
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
        <translation>تاريخ ميلادك غير مُدخَل، لذا تسري حدود الأطفال، وهي أدنى.</translation>
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
        <translation>الشركة الصانعة أو الطراز</translation>
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
        <translation>بمفتاح القطبية</translation>
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
        <translation>ما مصدر طاقته؟</translation>
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
        <translation>الجهاز والأدوات</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>بطاريات</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>لم تبقَ جلسات. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
            <numerusform>بقيت جلسة واحدة تقريبًا. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
            <numerusform>بقيت جلستان تقريبًا. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
            <numerusform>بقيت %n جلسات تقريبًا. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
            <numerusform>بقيت %n جلسةً تقريبًا. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
            <numerusform>بقيت %n جلسة تقريبًا. مجموعة من أربع بطاريات قلوية تكفي نحو ثلاث جلسات.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>سجّل متى تضع بطاريات جديدة، فيعدّ Firstdew الجلسات.</translation>
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
        <translation>موضع استعماله</translation>
    </message>
    <message>
        <source>The batteries are probably used up. Put in new ones.</source>
        <translation>نفدت البطاريات على الأرجح. ضع بطاريات جديدة.</translation>
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
        <translation>راجع طريقتك باستخدام Firstdew، ثم أجرِ ثلاث جلسات أخرى، ثم اتصل بي.</translation>
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
        <translation>اختياري. يظهر على الورق فقط، لا في الرمز.</translation>
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
        <translation>بحسب ما يناسب الشخص</translation>
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
        <translation>بكلماتك الخاصة</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>من المرسل</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>اسمك</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>جهة الاتصال، مع الرقم</translation>
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
        <translation>الوقت المتاح لليدين</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>مدة انتظار الصوت حين تكون اليدان في الماء.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>لرفع التيار</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>لخفض التيار</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>لتبديل القطبية</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>تسليم الورقة</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>شدة التيار للبدء في البيت</translation>
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
        <translation>لا تسجيل في هذه الأسابيع. المس يومًا لإضافة تسجيل.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>الخط تحت اليوم جلسة. المس يومًا لعرضه وتصحيحه.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>المس يومًا لعرضه وتصحيحه.</translation>
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
        <translation>الهاتف القديم: الإرسال من هنا</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>الهاتف الجديد: الإحضار إلى هنا</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. اختر عبارة مرور</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>ستكتبها مرة أخرى على الهاتف الجديد. من دونها لا يستطيع أحد فتح الملف، ولا حتى أنت.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>عبارة المرور</translation>
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
        <translation>افتح Firstdew هناك والمس «الانتقال من هاتف آخر». اختر الملف واكتب عبارة المرور. عندها يجب أن تظهر هذه الأرقام:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>اترك هذا الهاتف كما هو إلى أن تظهر لك.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>أحضِر السجل إلى هنا</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>على الهاتف القديم افتح الإعدادات، ثم «الانتقال إلى هاتف آخر»، وأرسِل الملف إلى هذا الهاتف. ثم اختره هنا.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>اختر الملف</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>عبارة مرور الملف</translation>
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
        <translation>ما كان على هذا الهاتف من قبل محفوظ في %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>إنشاء الملف</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>إرسال الملف</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>عرض محتواه</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>استعماله هنا</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>استبدال الموجود هنا</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>الانتقال إلى «اليوم»</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>تخطيط الدورة الأولى</translation>
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
        <translation>أجريت جلسة</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>تقول ورقة رعايتك: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>اذكر كيف هو الحال الآن</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>المتابعة حتى اثنتي عشرة جلسة</translation>
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
        <translation>لا وقت لدي</translation>
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
        <translation>ما السبب؟ تُحفظ الإجابة في سجلك؛ ويعود التنبيه حين يستدعيه تسجيل لاحق.</translation>
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
        <translation>سجّل ما يجفف جلدك غير الجلسات. لا تُحسب فترات الجفاف في ذلك الوقت ضمن التوقعات، ويراه طبيبك في الملخص.</translation>
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
        <translation>الموضع (بلا اختيار = كل المواضع)</translation>
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
        <translation>تظهر الأعمدة مع أول جلسة.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>جلسة مخطَّطة. كلما ازداد امتلاء العمود، زاد احتمال الرطوبة حتى ذلك اليوم؛ وبعد الجلسة يبدأ من جديد.</translation>
    </message>
    <message>
        <source>session planned</source>
        <translation>جلسة مخطَّطة</translation>
    </message>
    <message>
        <source>The fuller a bar, the likelier it is damp by that day.</source>
        <translation>كلما ازداد امتلاء العمود، زاد احتمال الرطوبة حتى ذلك اليوم.</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>متتابعة، تنتهي بحلول %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>بينها يوم، تنتهي بحلول %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Stage</source>
        <translation>المرحلة</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>الجلسات المكتملة: %1</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>الجلسات المقطوعة: %1</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>الجلسات في المدة</translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>الجلسة القادمة</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>لا تسجيلات سابقة</numerusform>
            <numerusform>تسجيل سابق واحد</numerusform>
            <numerusform>تسجيلان سابقان</numerusform>
            <numerusform>%n تسجيلات سابقة</numerusform>
            <numerusform>%n تسجيلًا سابقًا</numerusform>
            <numerusform>%n تسجيل سابق</numerusform>
        </translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>الأسئلة الصحية: لا إجابة بنعم.</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>أُجيب بنعم عن: %1.</translation>
    </message>
    <message>
        <source>Approved by %1 on %2: %3.</source>
        <translation>صرّح به %1 في %2: %3.</translation>
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
        <translation>سجّله الشخص في بيته؛ ليس جهازًا طبيًا ولا تشخيصًا. الأولوية لتعليمات الجهاز والقواعد المحلية والمختص الصحي. حروق أو بثور مائية أو دوار أو شعور بالإغماء أو خفقان: توقف واطلب المساعدة.</translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>ملخص الإرحال الأيوني</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>لم يُذكر اسم</translation>
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
        <source>%1 of %2 sessions done</source>
        <translation>الجلسات المنجزة: %1 من %2</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>البطاريات: لم تبقَ جلسات.</numerusform>
            <numerusform>البطاريات: بقيت جلسة واحدة تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت جلستان تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسات تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسةً تقريبًا.</numerusform>
            <numerusform>البطاريات: بقيت %n جلسة تقريبًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>مقطوعة</translation>
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
            <numerusform>%n جلسةً أقدم؛ وكلها في الملفات المصدَّرة.</numerusform>
            <numerusform>%n جلسة أقدم؛ وكلها في الملفات المصدَّرة.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>لم يُجَب عن الأسئلة الصحية بعد.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>ورقة رعاية من %1، %2، لـ: %3.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>لم تُدخَل مساحة لبّادات الإبطين، لذلك يبقى حدها منخفضًا.</translation>
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
        <translation>أيام فيها ظرف مؤثر: %1.</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>قياس العرق بالميزان: %1.</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>يُسأل عن الشدة بكلمات التطبيق، في أربع درجات على غرار مقياس HDSS.</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>أرقام هذه المدة</translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>توقّف وانظر</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>العلاج لا ينفع بعد</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>العلاج ينفع جزئيًا</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>العلاج ينفع</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>من المبكر الحكم</translation>
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
        <translation>أيام الرطوبة في الأسبوع: %1</translation>
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
            <numerusform>%1، لمدة ثانية واحدة</numerusform>
            <numerusform>%1، لمدة ثانيتين</numerusform>
            <numerusform>%1، لمدة %n ثوانٍ</numerusform>
            <numerusform>%1، لمدة %n ثانيةً</numerusform>
            <numerusform>%1، لمدة %n ثانية</numerusform>
        </translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>الجلد والتيار في هذه المدة</translation>
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
        <translation>لا جلسات في هذه المدة.</translation>
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
            <numerusform>لا شيء منها في غير يومه المقرر</numerusform>
            <numerusform>واحدة منها في غير يومها المقرر</numerusform>
            <numerusform>اثنتان منها في غير يومهما المقرر</numerusform>
            <numerusform>%n جلسات منها في غير يومها المقرر</numerusform>
            <numerusform>%n جلسةً منها في غير يومها المقرر</numerusform>
            <numerusform>%n جلسة منها في غير يومها المقرر</numerusform>
        </translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>أعلى تيار مريح في المدة</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>فترة الجفاف المعتادة، منذ البداية</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>علاجات أخرى</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>لا تُحسب فترات الجفاف في هذه المدة ضمن التوقعات.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>التعليم: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>ما شوهد: %1.</translation>
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
        <translation>قد يُظهر التطبيق أو الجهاز حدًا أدنى من هذا. والأدنى هو المعتبر.</translation>
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
        <translation>إذا بدأت في يوم آخر تنتقل الأيام كلها معه.</translation>
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
        <translation>انقع اللبّادات.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>ضع الصفيحة، ثم الشبكة فوقها، ثم الماء الدافئ.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>ضع اللبّادات. شغّل الجهاز: المقياس عند الصفر.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>الجلد تحت الماء. شغّل الجهاز: المقياس عند الصفر.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>ارفع التيار ببطء. قد تشعر بوخز. لكن يجب ألا يؤلمك.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>بين الأجزاء: اخفض إلى الصفر، بدّل القطبية أو الجانب، ثم ارفع من جديد.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>بين الأجزاء: اخفض إلى الصفر، بدّل القطبية، ثم ارفع من جديد.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>اخفض إلى الصفر، وأطفئ الجهاز. ثم انزع اللبّادات.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then take your hands or feet out.</source>
        <translation>اخفض إلى الصفر، وأطفئ الجهاز. ثم أخرِج يديك أو قدميك من الماء.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>يبقى شخص بالغ بجانب الطفل طوال الوقت.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>اليدان في الماء: يبقى شخص بجانبك.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>كل جلسة: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>متى توقف الجلسة</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands or feet out.</source>
        <translation>ألم أو دوار أو شعور بالإغماء أو خفقان: اخفض التيار إلى الصفر، وأطفئ الجهاز، ثم أخرِج يديك أو قدميك.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>حرق أو بثرة مائية: اترك الجهاز مطفأ حتى يفحص الموضعَ مختص صحي.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>حمل أو زرعة جديدة أو تغيّر في أي إجابة صحية أخرى: اترك الجهاز مطفأ واسأل أولًا.</translation>
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
        <translation>كُتبت باستخدام Firstdew، وهو ليس جهازًا طبيًا. اتبع تعليمات جهازك وإرشادات من يعالجك.</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>لا جلسة حاليًا</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>لم يبدأ بعد</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>انظر إلى الجلد (%1): سُجّل حرق في %2. لا جلسة هناك قبل أن تنظر إليه.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>انظر إلى الجلد (%1): سُجّلت بثرة مائية في %2. لا جلسة هناك قبل أن تنظر إليه.</translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has approved treatment.</source>
        <translation>هل هذا العلاج ممكن مع %1 (الإجابة بنعم في %2)؟ لا جلسة حتى يصرّح بها مختص صحي.</translation>
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
        <translation>لم يحدد أي طبيب حدًا.</translation>
    </message>
    <message>
        <source>%1 on %2, to begin with</source>
        <comment>score on day</comment>
        <translation>%1 في %2، في البداية</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>لم تُتابَع أي فترة جفاف حتى نهايتها</numerusform>
            <numerusform>تمت متابعة فترة جفاف واحدة حتى نهايتها</numerusform>
            <numerusform>تمت متابعة فترتي جفاف حتى نهايتهما</numerusform>
            <numerusform>تمت متابعة %n فترات جفاف حتى نهايتها</numerusform>
            <numerusform>تمت متابعة %n فترة جفاف حتى نهايتها</numerusform>
            <numerusform>تمت متابعة %n فترة جفاف حتى نهايتها</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>لا فترة لم تُتابَع حتى نهايتها</numerusform>
            <numerusform>فترة واحدة لم تُتابَع حتى نهايتها</numerusform>
            <numerusform>فترتان لم تُتابَعا حتى نهايتهما</numerusform>
            <numerusform>%n فترات لم تُتابَع حتى نهايتها</numerusform>
            <numerusform>%n فترةً لم تُتابَع حتى نهايتها</numerusform>
            <numerusform>%n فترة لم تُتابَع حتى نهايتها</numerusform>
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
        <translation>الشدة 1–4، إجابة الشخص نفسه (على غرار HDSS)</translation>
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
            <numerusform>لا تسجيل في المدة</numerusform>
            <numerusform>تسجيل واحد في المدة</numerusform>
            <numerusform>تسجيلان في المدة</numerusform>
            <numerusform>%n تسجيلات في المدة</numerusform>
            <numerusform>%n تسجيلًا في المدة</numerusform>
            <numerusform>%n تسجيل في المدة</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>أيام الأسبوع المسجّلة رطبة، ومنها ما بعد الحر أو المجهود، من 0 إلى 7. الداكن: بلل أو تقطّر. العلامات: الجلسات.</translation>
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
            <numerusform>أيام الجفاف بعد الجلسات. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
            <numerusform>أيام الجفاف بعد آخر جلسة. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
            <numerusform>أيام الجفاف بعد آخر جلستين. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسات. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسةً. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
            <numerusform>أيام الجفاف بعد آخر %n جلسة. المجوّف: أول يوم رطب غير معروف. المدبّب: لم تُتابَع حتى النهاية.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>ابدأ بتيار %1 أو أقل.</translation>
    </message>
    <message>
        <source>Armpit pads: %1.</source>
        <translation>لبّادات الإبطين: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1.</source>
        <translation>متوسط الشحنة لكل جلسة: %1.</translation>
    </message>
    <message>
        <source>%1 a minute on %2</source>
        <translation>%1 في الدقيقة في %2</translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>الوسيط أقل من يوم (%1: من %2 إلى %3)</numerusform>
            <numerusform>الوسيط يوم واحد (%1: من %2 إلى %3)</numerusform>
            <numerusform>الوسيط يومان (%1: من %2 إلى %3)</numerusform>
            <numerusform>الوسيط %n أيام (%1: من %2 إلى %3)</numerusform>
            <numerusform>الوسيط %n يومًا (%1: من %2 إلى %3)</numerusform>
            <numerusform>الوسيط %n يوم (%1: من %2 إلى %3)</numerusform>
        </translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where %1 of %2 responded).</source>
        <translation>تُحسب فترات الجفاف من آخر جلسة إلى أول يوم رطب، وتُعامل الأيام غير المسجّلة والجلسات الداعمة التي أُجريت والجلد ما زال جافًا على حقيقتها (بيانات مقطوعة بالفترات ومن اليمين). الاستجابة حسب مقياس HDSS: درجتان استجابة قوية، ودرجة واحدة استجابة جيدة (Gülmez &amp; Solak, J Clin Med 2026;15:640، حيث استجاب %1 من %2 شخصًا).</translation>
    </message>
    <message>
        <source>Batteries: probably used up.</source>
        <translation>البطاريات: نفدت على الأرجح.</translation>
    </message>
    <message>
        <source>severity %1&#xa0;now, %2&#xa0;before</source>
        <translation>الشدة: الآن&#xa0;%1، من قبل&#xa0;%2</translation>
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
        <translation>المعروض الآن</translation>
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
        <translation>الاسم الأول، أو الاسم الذي تفضّله</translation>
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
        <translation>الشخص البالغ بجانب الطفل</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>لا يُعالَج الأطفال إلا بنصيحة طبية وبوجود شخص بالغ بجانبهم.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>الطول بالسنتيمتر</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>اختياري. مع الوزن يدل على مساحة الجلد المعالَج.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>الوزن بالكيلوغرام</translation>
    </message>
    <message>
        <source>It sets your current limit. Without it, the children&apos;s limits apply.</source>
        <translation>يحدد أي الحدود تسري. ومن دونه تسري حدود الأطفال.</translation>
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
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>لا تتجاوز الدورة أسابيعها الأربعة.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بيوم واحد.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بيومين.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n أيام.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n يومًا.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n يوم.</numerusform>
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
        <source>Continue</source>
        <translation>متابعة</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>إيقاف مؤقت</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>الأسئلة الصحية</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>بانتظار الإجابة</translation>
    </message>
    <message>
        <source>Needs a clinician&apos;s approval</source>
        <translation>هناك ما يمنع الجلسة</translation>
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
        <translation>حدّد موضع العلاج والجهاز؛ عندها تظهر هنا حدودك وخطتك.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>المس يومًا لنقل جلسته.</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>جلسة بحضور معلّم</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>غير مسجّل</translation>
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
        <translation>إنهاء التدريب</translation>
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
        <translation>أدخِل يديك بعد خمس عشرة ثانية. أبقهما ساكنتين تحت الماء.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>ارفع التيار ببطء. قد تشعر بوخز. لكن يجب ألا يؤلمك.</translation>
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
        <source>Machine off. Now take your hands or feet out, and dry your skin.</source>
        <translation>أطفئ الجهاز. الآن أخرِج يديك أو قدميك وجفف جلدك.</translation>
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
        <source>Stopped. Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>توقفت الجلسة. اخفض التيار إلى الصفر، وأطفئ الجهاز، ثم أخرِج يديك أو قدميك.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>هذا هو مستوى صوتي. هل تسمعني مع صوت الماء؟</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، وهل الجهاز مضبوط على التيار المستمر؟ إذا كان كذلك فالمس الشاشة.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>شغّل الجهاز. هل المقياس عند الصفر، وهل ضوء التيار النبضي مضاء؟ إذا كان كذلك فالمس الشاشة.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>ارفع التيار ببطء بجهاز التحكم عن بعد. قد تشعر بوخز. لكن يجب ألا يؤلمك.</translation>
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
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى، وبدّل السلكين. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى، واقلب مفتاح القطبية. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى، وضع اليمنى مكان اليسرى واليسرى مكان اليمنى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>هل التيار عند الصفر؟ الآن انتقل إلى الجانب الآخر. غطِّ الجروح الصغيرة مرة أخرى. ثم المس الشاشة.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>أطفئ الجهاز. الآن انزع اللبّادتين وجفف جلدك.</translation>
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
        <translation>التسجيل اليومي</translation>
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
        <translation>أكثر: تأتي الجلسات الداعمة أبكر وأكثر. أقل: جلسات أقل وأيام رطبة أكثر. المعتاد: 2.</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>كم جلسة يستحق عندك تجنّب فترة رطوبة واحدة؟</translation>
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
        <translation>قبل الجلسة يجب أن يعرف Firstdew جهازك وإجاباتك عن الأسئلة الصحية.</translation>
    </message>
    <message>
        <source>Continue the set-up</source>
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
        <translation>الجهاز والأدوات</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>غير محدد</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>البطاريات: لم تبقَ جلسات</numerusform>
            <numerusform>البطاريات: بقيت جلسة واحدة تقريبًا</numerusform>
            <numerusform>البطاريات: بقيت جلستان تقريبًا</numerusform>
            <numerusform>البطاريات: بقيت %n جلسات تقريبًا</numerusform>
            <numerusform>البطاريات: بقيت %n جلسةً تقريبًا</numerusform>
            <numerusform>البطاريات: بقيت %n جلسة تقريبًا</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>التسجيل %1، هدوء من %2 إلى %3</translation>
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
        <translation>كإعداد الهاتف</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>الانتقال إلى هاتف آخر</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>نقل كل شيء معك</translation>
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
    <message>
        <source>Batteries: probably used up</source>
        <translation>البطاريات: نفدت على الأرجح</translation>
    </message>
    <message>
        <source>Ask for this phone&apos;s lock before showing the diary</source>
        <translation>طلب قفل هذا الهاتف قبل عرض اليوميات</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>تشغيل قفل تطبيق Firstdew أو إيقافه</translation>
    </message>
    <message>
        <source>This phone could not ask for its lock. Nothing was changed.</source>
        <translation>تعذّر على هذا الهاتف طلب قفله. لم يتغيّر شيء.</translation>
    </message>
    <message>
        <source>When Firstdew starts, and when you come back after a minute. A session is never locked.</source>
        <translation>عند بدء Firstdew، وعند العودة إليه بعد دقيقة. الجلسة لا تُقفل أبدًا.</translation>
    </message>
    <message>
        <source>This phone has no lock that Firstdew can ask for: your diary opens without it.</source>
        <translation>ليس لهذا الهاتف قفل يستطيع Firstdew طلبه: تُفتح يومياتك بدونه.</translation>
    </message>
    <message>
        <source>For this, the phone needs a lock of its own that Firstdew can ask for.</source>
        <translation>لهذا يحتاج الهاتف إلى قفل خاص به يستطيع Firstdew طلبه.</translation>
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
        <translation>كإعداد الهاتف</translation>
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
        <translation>الحد، التيار المستمر</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>الحد، التيار النبضي</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>وقت رفع التيار</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>وقت خفض التيار</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>وقت تبديل القطبية</translation>
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
            <numerusform>0 ثانية</numerusform>
            <numerusform>ثانية واحدة</numerusform>
            <numerusform>ثانيتان</numerusform>
            <numerusform>%n ثوانٍ</numerusform>
            <numerusform>%n ثانيةً</numerusform>
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
        <translation>لبّادات الإبطين</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>إذا لم تنفع الدورة</translation>
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
        <translation>شدة التيار للبدء</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>جهة الاتصال</translation>
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
            <numerusform>%1: %2 × 0 دقيقة</numerusform>
            <numerusform>%1: %2 × دقيقة واحدة</numerusform>
            <numerusform>%1: %2 × دقيقتان</numerusform>
            <numerusform>%1: %2 × %n دقائق</numerusform>
            <numerusform>%1: %2 × %n دقيقةً</numerusform>
            <numerusform>%1: %2 × %n دقيقة</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>مرتفع جدًا: الحد المعتاد %1. اخفضه.</translation>
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
        <translation>اختر ما لا يزيد على 60 يومًا، ابتداءً من اليوم 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>هذا قبل تاريخ الورقة. اختر يومًا بعده.</translation>
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
    <message>
        <source>%1 each</source>
        <translation>%1 لكل منها</translation>
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
        <translation>حروق أو بثور مائية: لا جلسة هناك حتى يفحص الموضعَ مختص صحي.</translation>
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
        <translation>الصوت بالإنجليزية حتى الآن.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>جرّب مستوى الصوت</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>الاهتزاز فقط</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>حين تكون كلتا اليدين تحت الماء لا يشعر أحد باهتزاز الهاتف: عندئذ يُسمع الصوت والنغمات على أي حال.</translation>
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
        <translation>القراءة فوق الحد تطلق الإنذار أيًا كان الاختيار هنا. الهاتف لا يرى التيار، بل يعرف ما يُدخَل فقط.</translation>
    </message>
    <message>
        <source>Which voice</source>
        <translation>أي صوت</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>صوت مسجّل</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>صوت الهاتف</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>الصوت المسجّل يتحدث الإنجليزية. أما صوت الهاتف فيتحدث لغتك.</translation>
    </message>
    <message>
        <source>You can choose the voice of this phone once it offers one for your language.</source>
        <translation>يمكن اختيار صوت الهاتف متى وفّر الهاتف صوتًا بلغتك.</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>الدواسة أو المفتاح يوقف الجلسة، مثل أي زر</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>يُسمع صوت خافت طوال الجلسة. إذا توقف، فاخفض التيار إلى الصفر وأطفئ الجهاز.</translation>
    </message>
    <message>
        <source>The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.</source>
        <translation>الصوت المسجّل لا يتحدث لغتك. يتحدث صوت هذا الجهاز بدلاً منه: تحقق من علو الصوت واسمع هل تفهمه.</translation>
    </message>
    <message>
        <source>You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.</source>
        <translation>يمكنك متابعة الجلسة بالنغمات وعلى الشاشة. ويبقى خيار «كلتا اليدين تحت الماء» مغلقًا إلى أن يُعرف صوت يتحدث لغتك.</translation>
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
        <translation>هل من سبب قد يفسّر ذلك؟</translation>
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
        <translation>يستطيع Firstdew أن يضع في ملف جديد كل ما لا تزال قراءته ممكنة، وما تحويه نسخة بجانبه. ويُحتفظ بالملف التالف.</translation>
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
        <translation>عبارة مرور النسخة الاحتياطية</translation>
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
        <translation>المدة</translation>
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
        <source>Your questions appear near the top of the page.</source>
        <translation>ما تريد السؤال عنه يظهر قرب أعلى الصفحة.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>سؤالك</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>إضافته إلى الصفحة</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>عرضه</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>صفحة تبيّن سير العلاج وما تسأل عنه، وثانية فيها كل جلسة. لا يخرج شيء من الهاتف قبل أن تختار وجهته.</translation>
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
        <translation>حفظه كملف</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>لا أشخاص</numerusform>
            <numerusform>شخص واحد</numerusform>
            <numerusform>شخصان</numerusform>
            <numerusform>%n أشخاص</numerusform>
            <numerusform>%n شخصًا</numerusform>
            <numerusform>%n شخص</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>لا تسجيلات</numerusform>
            <numerusform>تسجيل واحد</numerusform>
            <numerusform>تسجيلان</numerusform>
            <numerusform>%n تسجيلات</numerusform>
            <numerusform>%n تسجيلًا</numerusform>
            <numerusform>%n تسجيل</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>لا جلسات</numerusform>
            <numerusform>جلسة واحدة</numerusform>
            <numerusform>جلستان</numerusform>
            <numerusform>%n جلسات</numerusform>
            <numerusform>%n جلسةً</numerusform>
            <numerusform>%n جلسة</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>آخر تسجيل: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>جلسة بحضور معلّم</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>هل راقب جلسةً لك شخص يعرف هذا العلاج؟ سجّلا معًا ما شاهده. ويظهر ذلك في الملخص.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>موضع العلاج</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>من راقب الجلسة</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>اسم أو دور، مثلًا: ممرض العيادة</translation>
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
        <translation>شدة التيار المتفق عليها للبدء في البيت</translation>
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
        <translation>فُحص الجلد ونُزعت الحلي</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>نُقعت اللبّادات وثُبّتت بإحكام</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>جُهّز الحوضان والصفيحتان والماء</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>رُفع التيار ببطء مع القول متى يكفي</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>بُدّلت القطبية عند الصفر</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>يعرف الشخص ما يفعل إذا انفصلت لبّادة</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>يعرف الشخص ما يفعل إذا خرجت يد أو قدم من الماء</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>يعرف الشخص متى يتوقف وبمن يتصل</translation>
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
        <translation>هل كان التيار مرتفعًا بقدر ما هو مريح، من دون أن يتجاوز حدّك أبدًا؟ التيار الضعيف لا يفيد كثيرًا.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>هل بُدّلت القطبية في منتصف كل جلسة؟</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>هل كان الجلد خاليًا من الكريم؟ الكريم يمنع مرور التيار. والفازلين يوضع على الجروح فقط.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>هل كان كل شيء تحت الماء، منبسطًا على الشبكة ومن دون ضغط؟</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>والجهاز مطفأ: هل كل سلك موصول بالكامل؟ هل اللبّادات مشبعة بالماء ومثبتة بإحكام؟</translation>
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
        <translation>هل ماؤك قليل الأملاح جدًا؟ إنه يوصّل التيار توصيلًا ضعيفًا. اسأل ممرضك أو طبيبك عمّا ينبغي فعله، ولا تُضف شيئًا من تلقاء نفسك، ولا حتى الملح.</translation>
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
        <translation>%1، الوقت المختار</translation>
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
        <translation>أخرِج البطاريات وخذ معك بطاريات جديدة.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>خذ مع الجهاز تعليماته لمن يسأل عند الحدود.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>في مكان إقامتك</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>جهّز كما في البيت: يدان جافتان، والسلكان والجهاز بعيدًا عن الماء، ولا شيء من المعدن تحت الحوضين.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>يختلف الماء من مكان إلى آخر. ارفع التيار أبطأ مما في البيت، واعتمد على المقياس.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>الماء القليل الأملاح جدًا يوصّل التيار توصيلًا ضعيفًا. اسأل ممرضك أو طبيبك عمّا ينبغي فعله، ولا تُضف شيئًا من تلقاء نفسك، ولا حتى الملح.</translation>
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
        <translation>ما سُجّل من قبل سليم. وفّر مساحة على الهاتف أو أعد تشغيل التطبيق ثم حاول مرة أخرى.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
</context>
<context>
    <name>UnguardedSheet</name>
    <message>
        <source>The app lock does not work here</source>
        <translation>قفل التطبيق لا يعمل هنا</translation>
    </message>
    <message>
        <source>It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.</source>
        <translation>قفل التطبيق مشغّل، لكن ليس لهذا الهاتف قفل يستطيع Firstdew طلبه. لذلك فُتحت يومياتك بدونه.</translation>
    </message>
    <message>
        <source>Set a screen lock in the phone&apos;s own settings, or switch the app lock off under Settings.</source>
        <translation>عيّن قفلًا للشاشة في إعدادات الهاتف، أو أوقف قفل التطبيق من «الإعدادات».</translation>
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
        <translation>أيام الرطوبة في الأسبوع</translation>
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
        <translation>الغامق: أيام البلل أو التقطّر. الفاتح: أيام الرطوبة وحدها. العلامات في الأسفل: جلساتك.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>الغامق: أيام البلل أو التقطّر. الفاتح: أيام الرطوبة وحدها.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>قياس العرق بالميزان</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>قبل، بالملغ</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>بعد، بالملغ</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>لا يمكن أن يقل وزن الورقة بعد ذلك؛ زِنها مرة أخرى.</translation>
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
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>زِن ورقة، وضعها على الجلد خمس دقائق، ثم زِنها مرة أخرى. يلزم ميزان يُظهر الملغ.</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 في الدقيقة</translation>
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
        <translation>يرشدك Firstdew في علاج تعرّق اليدين أو القدمين أو الإبطين بماء الصنبور وتيار ضعيف. ويخبرك متى يحين موعد الجلسة التالية.</translation>
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
            <numerusform>لا فترات جفاف في يومياتك بعد.</numerusform>
            <numerusform>استنادًا إلى فترة جفاف واحدة في يومياتك.</numerusform>
            <numerusform>استنادًا إلى فترتي جفاف في يومياتك.</numerusform>
            <numerusform>استنادًا إلى %n فترات جفاف في يومياتك.</numerusform>
            <numerusform>استنادًا إلى %n فترة جفاف في يومياتك.</numerusform>
            <numerusform>استنادًا إلى %n فترة جفاف في يومياتك.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>ما زالت مستمرة، أو جاءت جلسة داعمة والجلد جاف: %1.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>هذا تقدير من تسجيلاتك أنت وليس تشخيصًا. رأي طبيبك هو المعتمد.</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>لا توقعات بعد. تبدأ بعد دورة مكتملة ونحو أسبوعين من التسجيل.</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>نسبة الفترات التي ما زالت جافة</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>فترة رطوبة واحدة = %1 من الجلسات. لذلك يحين موعد الجلسة الداعمة %2، أو أبكر إن لم يكن هناك تسجيل.</translation>
    </message>
    <message>
        <source>The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>يبيّن المنحنى نسبة فترات الجفاف التي تدوم أطول من عدد الأيام المبيّن أسفله. يضم النطاق الداخلي النصف الأوسط منها، والخارجي أربعًا من كل خمس. الأعمدة: أحدث فتراتك؛ مجوّفة حيث وقع التغيّر بين تسجيلين، وبسهم حيث جاءت جلسة والجلد ما زال جافًا أو ما زالت الفترة مستمرة. الأعمدة الباهتة: في ظل علاج آخر.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>غير محسوبة، في ظل علاج آخر: %1.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>الأيام القادمة</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>من كل عشرين يومًا كهذا، هذا عدد الأيام التي تعود فيها الرطوبة حتى ذلك الحين إن لم تسبقها جلسة.</translation>
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
    <message>
        <source>Your dry spells are getting shorter</source>
        <translation>فترات الجفاف لديك تقصر</translation>
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
        <translation>جفاف</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>رطوبة</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>بلل</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>تقطّر</translation>
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
        <translation>جلسة يد مع قدم</translation>
    </message>
    <message>
        <source>Armpit session</source>
        <translation>جلسة الإبطين</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>لم يبدأ العلاج</translation>
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
        <translation>جفاف مستمر</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>أول الندى</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>عودة التعرّق</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>توقف مؤقت</translation>
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
        <translation>بثرة مائية</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>حرق</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>بلا إحساس</translation>
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
        <translation>ثلاث جلسات أسبوعيًا لأربعة أسابيع</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>خمس جلسات أسبوعيًا لأسبوعين</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>حسب الوصفة</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>هل أنتِ حامل أو قد تكونين حاملًا؟</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>هل لديك منظّم ضربات قلب أو مزيل رجفان أو أي زرعة أخرى تعمل بالكهرباء؟</translation>
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
        <translation>زرعة تعمل بالكهرباء</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>زرعة معدنية</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>اضطراب في نظم القلب أو الصرع</translation>
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
        <translation>الممارسة الشائعة، البالغون</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>الممارسة الشائعة، الأطفال</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>اختيارنا الحذر، الأطفال</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>حدّده %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>جهازك لا يعطي هذا التيار</translation>
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
        <translation>أول الندى: جلسة داعمة الآن</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>حان وقت الجلسة الداعمة</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>راقب الحال</translation>
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
        <translation>تحدّث مع طبيبك</translation>
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
        <translation>الجلسة %1 من %2 من الدورة الأولى مخطَّطة لليوم.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>موعد الجلسة %1 من %2 من الدورة الأولى: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>لا تتجاوز الدورة أسابيعها الأربعة.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بيوم واحد.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بيومين.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n أيام.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n يومًا.</numerusform>
            <numerusform>تتجاوز الدورة أسابيعها الأربعة بـ%n يوم.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course can no longer finish in time.</source>
        <translation>لم يعد الوقت المتبقي يكفي لإكمال الدورة.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>اكتملت الدورة.</numerusform>
            <numerusform>اكتملت الجلسة الوحيدة في الدورة.</numerusform>
            <numerusform>اكتملت جلستا الدورة كلتاهما.</numerusform>
            <numerusform>اكتملت جلسات الدورة كلها، وهي %n جلسات.</numerusform>
            <numerusform>اكتملت جلسات الدورة كلها، وهي %n جلسةً.</numerusform>
            <numerusform>اكتملت جلسات الدورة كلها، وهي %n جلسة.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>تمت جلسة اليوم.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>سُجّل اليوم.</numerusform>
            <numerusform>لا تسجيل منذ يوم واحد.</numerusform>
            <numerusform>لا تسجيل منذ يومين.</numerusform>
            <numerusform>لا تسجيل منذ %n أيام.</numerusform>
            <numerusform>لا تسجيل منذ %n يومًا.</numerusform>
            <numerusform>لا تسجيل منذ %n يوم.</numerusform>
        </translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has approved treatment.</source>
        <translation>الإجابة بنعم عن: %1. لا جلسة حتى يصرّح بها مختص صحي.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>بسبب %1، اسأل مختصًا صحيًا أولًا وسجّل اسم من وافق.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>أُجيب عن الأسئلة الصحية اليوم.</numerusform>
            <numerusform>آخر إجابة عن الأسئلة الصحية كانت قبل يوم واحد.</numerusform>
            <numerusform>آخر إجابة عن الأسئلة الصحية كانت قبل يومين.</numerusform>
            <numerusform>آخر إجابة عن الأسئلة الصحية كانت قبل %n أيام.</numerusform>
            <numerusform>آخر إجابة عن الأسئلة الصحية كانت قبل %n يومًا.</numerusform>
            <numerusform>آخر إجابة عن الأسئلة الصحية كانت قبل %n يوم.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>لم يُجَب عن الأسئلة الصحية بعد.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>جهازك يعطي تيارًا مستمرًا فقط، ولا يجوز استعماله للإبطين.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>لم تتحسن درجة الإزعاج. هناك علاجات أخرى؛ ويمكن لطبيبك أن ينصحك.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>تحسنت درجة الإزعاج درجة واحدة.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>تحسنت درجة الإزعاج درجتين أو أكثر.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>أُوقف هذا مؤقتًا بطلبك.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>تأجل إلى هذا المساء بطلبك.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>تأجل بطلبك. الموعد الجديد: %1.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>أُلغي هذه المرة.</translation>
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
        <translation>⁦%1&#xa0;mA⁩</translation>
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
        <translation>تؤكد كل خطوة بنفسك بلمسة.</translation>
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
        <translation>مخفّض بحسب مساحة الجلد المعالَج</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>الإبطان يُعالجان بالتيار النبضي فقط</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>عند العلاج الآن تكفي عادةً جلسة أو جلستان.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>رطوبة أثناء الراحة، التسجيل: %1.</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>سُجّلت رطوبة (%1)، وقد يفسّرها ما كان في ذلك اليوم. تحقق مرة أخرى غدًا.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>رطوبة مرتين متتاليتين، آخر تسجيل: %1.</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>تعرّق كامل أثناء الراحة، التسجيل: %1. يحتاج عادةً إلى دورة جديدة.</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1: جلسة اليوم</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1: حان وقت الجلسة الداعمة</translation>
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
        <translation>ستلزم بطاريات جديدة قريبًا</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>حان وقت الأسئلة الصحية</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1: كم يزعجك التعرّق؟</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>اعرض الملخص على طبيبك</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>حان وقت النسخ الاحتياطي</translation>
    </message>
    <message>
        <source>The first course works if you stick to it.</source>
        <translation>تنجح الدورة الأولى عند الالتزام بها.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>قبل أن تعود الرطوبة.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>في اليوم التالي للجلسة: هل من احمرار أو بثرة مائية أو حرق؟</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>البطاريات في الجهاز تكفي لنحو جلسة واحدة أخرى.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>قبل الجلسة القادمة، كما في كل أربعة أسابيع.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>سؤال واحد وأربع إجابات.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>الملخص على بُعد لمستين.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>نسخة مشفّرة تُحفظ حيث تختار.</translation>
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
        <translation>أخرِج يديك أو قدميك</translation>
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
        <source>Machine off. Then take your hands or feet out. Dry your skin and the kit.</source>
        <translation>أطفئ الجهاز، ثم أخرِج يديك أو قدميك من الماء. جفف الجلد والأدوات.</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>عولج هذا الموضع اليوم. دع الجلد يرتاح. الجلسة التالية: غدًا على أقرب تقدير.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>حان وقت الأسئلة الصحية. اترك الجهاز مطفأ حتى تجيب عنها.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has approved treatment.</source>
        <translation>إجابة عن أحد الأسئلة الصحية تمنع الجلسة. اترك الجهاز مطفأ حتى يصرّح بها مختص صحي.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>جهازك لا يعطي هذا التيار. اختر ما يعطيه.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>لا مقياس يُظهر ذلك. اقرأه مرة أخرى؛ وعند الشك اخفض التيار.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>قد يكون التيار ما زال جاريًا. اخفضه إلى الصفر أولًا.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>تطبيق Firstdew ليس جهازًا طبيًا ولا يشخّص. اتبع تعليمات جهازك والقواعد المحلية وإرشادات من يعالجك.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>لا تتجاوز الحدود أبدًا. قد تشعر بوخز، لكن يجب ألا يؤلمك أبدًا. إذا آلمك فاخفض التيار وتوقف.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>لا تُجرِ أي جلسة إذا كان أحد الأسئلة الصحية يطلب منك التوقف.</translation>
    </message>
    <message>
        <source>Treat children only with medical advice and an adult beside them.</source>
        <translation>لا يُعالَج الأطفال إلا بنصيحة طبية وبوجود شخص بالغ بجانبهم.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>حروق أو بثور مائية أو دوار أو شعور بالإغماء أو خفقان: توقف واطلب المساعدة.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>أبعد الأسلاك والماء عن كهرباء المنزل.</translation>
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
        <source>Reminders may be a few minutes late on this phone.</source>
        <translation>قد تتأخر: هذا الهاتف لا يسمح بوصولها في دقيقتها بالضبط.</translation>
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
        <translation>هذه ليست نسخة احتياطية، أو أنها مقطوعة أو مغيَّرة. خذ نسخة أخرى.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>لا مساحة متبقية؛ لم يُكتب شيء. وفّر مساحة وحاول مرة أخرى.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>تعذرت قراءة ملف أو كتابته. تحقق من وجوده ومن توفر مساحة.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>هذا الملف أكبر من أن يكون الملف الصحيح.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>برنامج آخر يستعمل السجل. أغلقه وحاول مرة أخرى.</translation>
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
        <translation>لا تُفتح بعبارة المرور هذه أو أنها تالفة. حاول مرة أخرى أو خذ نسخة احتياطية أخرى.</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>الطبيب المعالج</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>فريق التمريض</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>أول مرة هنا: ابدأ بتيار منخفض، واعتمد على ما هو مريح.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>كان %1 مريحًا في المرة السابقة.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>كان %1 مزعجًا في المرة السابقة، لذا الهدف أقل.</translation>
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
        <translation>شدة التيار نفسها كالمرة السابقة، إلى أن تصبح مريحة.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>قد يكون التيار المستمر أفضل الآن؛ اسأل الشخص البالغ أو الممرض الذي يساعدك.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;د</translation>
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
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>الحلي والساعة والحلي المثبتة في الجلد منزوعة (لا يلزم فوق الرقبة)</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>الجروح مغطاة بطبقة رقيقة من الفازلين، على الجلد المجروح فقط</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>كل صفيحة تحت شبكتها؛ لا يلمس الجلد الصفيحة أبدًا</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>اللبّادات مشبعة بالماء ومثبتة بإحكام</translation>
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
        <source>All checked, begin</source>
        <translation>تحققت من كل شيء، ابدأ</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>رُفع مرة أخرى</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>التيار مريح</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>تغيّر الجانب</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>المرحلة تنتظر والتيار عند الصفر. ارفعه مرة أخرى عند الاستعداد.</translation>
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
        <source>none yet</source>
        <translation>لا شيء بعد</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>لا تستعمل لتوليد التيار إلا جهازًا صُنع لهذا العلاج، مع ما جاء معه.</translation>
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
        <translation>لم تكتمل الجلسة السابقة، لذا شدة التيار نفسها مرة أخرى.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>تهيّج الجلد بعد %1، لذا الهدف أقل بوضوح.</translation>
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
        <translation>ابدأ بتيار %1. قد يرتفع التيار شيئًا فشيئًا من تلقاء نفسه، لذا اترك في البداية هامشًا دون الحد قدره %2.</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>فحصتُ جلدي: لا احمرار جديد ولا بثرة مائية ولا حرق</translation>
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
        <translation>الجهاز يعمل، عند الصفر، تيار مستمر</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>الجهاز يعمل، عند الصفر، ضوء التيار النبضي مضاء</translation>
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
        <translation>مضى على ذلك أكثر من عشر دقائق، لذا انتهت هذه الجلسة. وما أنجزته محفوظ.</translation>
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
        <translation>سُجّلت هناك بثرة مائية أو حرق. اترك الجهاز مطفأ حتى يفحص الموضعَ مختص صحي.</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>أدخل تاريخ الميلاد أولًا. فحد التيار يتوقف عليه.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>ورقة رعايتك تصف هنا التيار الآخر. اختر ذلك التيار.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>إذا كانت كلتا يديك في الماء فيلزمك جهاز تحكم عن بعد، ولم يُدخَل أي واحد لجهازك. اطلب من شخص أن يبقى بجانبك.</translation>
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
        <translation>هذا يكفي لليوم. اترك الجهاز مطفأ؛ الجلسة التالية غدًا على أقرب تقدير.</translation>
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
        <translation>يبقى منخفضًا حتى تُدخَل مساحة اللبّادات في «الجهاز والأدوات»</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>وصف %1 التيار الآخر</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1، التسجيل: %2. لا جلسة هنا حتى يفحص الموضعَ مختص صحي.</translation>
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
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى واقلب مفتاح القطبية.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى، وضع اليمنى مكان اليسرى واليسرى مكان اليمنى.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>هل التيار عند الصفر؟ انقع اللبّادتين مرة أخرى وبدّل السلكين.</translation>
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
        <translation>راقب جلدك عند ما يزيد على %1.</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>أول ثلاث جلسات لك هنا تسير خطوة بخطوة.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>مضت أربعة أسابيع أو أكثر. لنمضِ خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>في المرة الماضية لم يكن شيء ما على ما يرام. لنمضِ خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>تغيّر جهازك. لنمضِ خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>أول جلسة لك وكلتا اليدين في الماء تسير خطوة بخطوة.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>الهدف %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>لم يتغيّر شيء في صحتي</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>الجهاز يعمل، عند الصفر، تيار مستمر: ابدأ</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>الجهاز يعمل، عند الصفر، ضوء التيار النبضي مضاء: ابدأ</translation>
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
        <translation>عند تشغيل قارئ الشاشة لا توقف اللمسة في أي مكان الجلسة. اطلب من شخص أن يبقى بجانبك، أو استعمل دواسة أو مفتاحًا.</translation>
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
        <translation>تاريخ ورقة الرعاية هذه في المستقبل. اطلب ورقة بالتاريخ الصحيح.</translation>
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
        <translation>هل يُحتمل وجود حمل لدى %1؟</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>هل لدى %1 منظّم ضربات قلب أو مزيل رجفان أو أي زرعة أخرى تعمل بالكهرباء؟</translation>
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
        <source>Is %1 under five years old?</source>
        <translation>هل عمر %1 أقل من خمس سنوات؟</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>هل عمر %1 أقل من ثماني عشرة سنة؟</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>هل لدى %1 إكزيما أو جلد ملتهب في موضع العلاج؟</translation>
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
        <translation>بلل أثناء الراحة، التسجيل: %1. تسجيل واحد لا يكفي لبدء دورة جديدة.</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>لا تحسّن بعد</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>تصف ورقة رعايتك تيارًا لا يعطيه جهازك. اسأل من كتبها.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>أدخل أولًا نوع التيار الذي يعطيه جهازك.</translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>قبل أي جلسة من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد جلسة واحدة من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد جلستين من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسات من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسةً من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
            <numerusform>بعد %n جلسة من المبكر القول إن العلاج لا ينفع: يحتاج كثيرون إلى عشر جلسات حتى اثنتي عشرة. راجع طريقتك أولًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>اذكر كم يزعجك التعرّق الآن، عندها يستطيع التطبيق أن يبيّن هل نفعت الدورة.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>تأتي الإجابة مع أولى الجلسات وأسبوع من التسجيلات.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>تظهر الإجابة الآن.</numerusform>
            <numerusform>تظهر الإجابة بعد تسجيل واحد آخر.</numerusform>
            <numerusform>تظهر الإجابة بعد تسجيلين آخرين.</numerusform>
            <numerusform>تظهر الإجابة بعد %n تسجيلات أخرى.</numerusform>
            <numerusform>تظهر الإجابة بعد %n تسجيلًا آخر.</numerusform>
            <numerusform>تظهر الإجابة بعد %n تسجيل آخر.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>لا تغيّر بعد.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل جلسة واحدة أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل جلستين أخريين.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسات أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسةً أخرى.</numerusform>
            <numerusform>لا تغيّر بعد. هذا لا يعني الكثير قبل %n جلسة أخرى.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>من المبكر الحكم هل ينفع العلاج</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>العلاج لا ينفع بعد</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>العلاج ينفع جزئيًا</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>العلاج ينفع</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>أقل من %1</translation>
    </message>
    <message>
        <source>Damp days a week: %1.</source>
        <translation>أيام الرطوبة في الأسبوع: %1.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>كانت فترات جفافك الأخيرة قصيرة.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>اعرض الملخص على طبيبك. قد تنفع علاجات أخرى.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>كثيرون يحتاجون إلى 10 حتى 12 جلسة.</translation>
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
        <translation>هناك ما يستحق نظرة اليوم</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>اكتمل تسجيل اليوم</translation>
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
        <translation>فاتت الجلسة %1 في %2. موعدها الآن اليوم.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>فاتت الجلسة %1 في %2. موعدها الآن %3.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>لا تضع الخطة جلسات في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة جلسة واحدة بلا يوم راحة.</numerusform>
            <numerusform>تضع الخطة جلستين في يومين متتاليين.</numerusform>
            <numerusform>تضع الخطة %n جلسات في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة %n جلسةً في أيام متتالية.</numerusform>
            <numerusform>تضع الخطة %n جلسة في أيام متتالية.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>مع يوم بينها لا تطول المدة.</numerusform>
            <numerusform>مع يوم بينها تطول المدة يومًا واحدًا عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة يومين عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n أيام عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n يومًا عن المخطط.</numerusform>
            <numerusform>مع يوم بينها تطول المدة %n يوم عن المخطط.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>سفرك في %1.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>سفرك من %1 إلى %2.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>قد تعود الرطوبة في هذه المدة. تستحق الأمر جلسة داعمة قبل السفر.</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>جلسة داعمة قبل السفر</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>أيام غيابك لم تنتهِ. يأتي تنبيه الجلسة عند عودتك.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1: جفاف أم رطوبة اليوم؟</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>تكفي لمسة واحدة للإجابة. أو المس هنا لفتح Firstdew.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>لم يصل كل شيء. نسختك الاحتياطية كما كانت. حاول مرة أخرى بالملف نفسه.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>الأرجح أن الرطوبة قد بدأت.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>حان وقت الجلسة الداعمة منذ %1.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>قد يصبح جلدك رطبًا بحلول الغد. تستحق الأمر جلسة داعمة الآن.</translation>
    </message>
    <message>
        <source>Going by your check-ins so far, the chance that dampness has begun is %1. The curve above does not include them.</source>
        <translation>بحسب تسجيلاتك حتى الآن، احتمال أن تكون الرطوبة قد بدأت %1. المنحنى أعلاه لا يأخذها في الحسبان.</translation>
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
        <translation>تدريب: المرحلة تنتظر. في جلسة حقيقية ترفع التيار مرة أخرى عند الاستعداد.</translation>
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
            <numerusform>في جلسة حقيقية لا يستغرق هذا أي دقيقة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا دقيقة واحدة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا دقيقتين.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقائق.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقيقةً.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n دقيقة.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>في جلسة حقيقية لا يستغرق هذا أي ثانية.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا ثانية واحدة.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا ثانيتين.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثوانٍ.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثانيةً.</numerusform>
            <numerusform>في جلسة حقيقية يستغرق هذا %n ثانية.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>لا يمكنك اليوم بدء جلسة حقيقية: %1</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>اذكر من راقب الجلسة، وضع علامة على ما شوهد.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>هذا فوق الحد البالغ %1 هناك. اتفقا على شدة لا تتجاوز الحد.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>ابدأ بشدة التيار المتفق عليها عند التعليم.</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>جلد جاف</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>تعذّر الحفظ هناك. اختر مكانًا آخر أو وفّر مساحة أولًا.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>أدخل الطول والوزن لتُحسب مساحة هذا الجلد أيضًا.</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>المقياس فوق الحد. اخفض التيار، ثم أدخل ما يظهر على المقياس.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>لا يصدر صوت من هذا الهاتف، فلن تسمع الإنذار. شغّل الصوت ثم ابدأ.</translation>
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
            <numerusform>عندما كان احتمال اليوم التالي %1، لم تكن هناك أيام، والرطوبة جاءت في %2.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من يوم واحد.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من يومين.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n أيام.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n يومًا.</numerusform>
            <numerusform>عندما كان احتمال اليوم التالي %1، جاءت الرطوبة في %2 من %n يوم.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>يستطيع التطبيق الآن أن يبيّن مدى صحة توقعاته.</numerusform>
            <numerusform>بعد تسجيل واحد آخر يستطيع التطبيق أن يبيّن مدى صحة توقعاته.</numerusform>
            <numerusform>بعد تسجيلين آخرين يستطيع التطبيق أن يبيّن مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيلات أخرى يستطيع التطبيق أن يبيّن مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيلًا آخر يستطيع التطبيق أن يبيّن مدى صحة توقعاته.</numerusform>
            <numerusform>بعد %n تسجيل آخر يستطيع التطبيق أن يبيّن مدى صحة توقعاته.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>التوقعات صحيحة حتى الآن.</translation>
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
    <message>
        <source>%1 mA·min</source>
        <translation>⁦%1&#xa0;mA·min⁩</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1&#xa0;ث</translation>
    </message>
    <message>
        <source>%1 mg</source>
        <translation>%1&#xa0;ملغ</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1&#xa0;مل</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1&#xa0;سم²</translation>
    </message>
    <message>
        <source>%1%</source>
        <translation>%1%</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a list</comment>
        <translation>، </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a name and what belongs to it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1, by height and weight.</source>
        <translation>باطن القدم الواحدة يُحسب %1، بحسب الطول والوزن.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1, by height and weight.</source>
        <translation>راحة اليد الواحدة تُحسب %1، بحسب الطول والوزن.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as entered with the machine.</source>
        <translation>اللبّادة الواحدة تُحسب %1، كما أُدخل مع الجهاز.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as on the care sheet.</source>
        <translation>اللبّادة الواحدة تُحسب %1، كما في ورقة الرعاية.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1.</source>
        <translation>لم تُدخَل مساحة اللبّادات، لذا تُحسب اللبّادة الواحدة %1.</translation>
    </message>
    <message>
        <source>%1 of current, about %2 in all</source>
        <translation>%1 من التيار، نحو %2 إجمالًا</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>المتبقي إجمالًا %1</translation>
    </message>
    <message>
        <source>%1 %2 left</source>
        <comment>minutes, seconds</comment>
        <translation>المتبقي %1 %2</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 in each tray</source>
        <translation>ماء صنبور دافئ، نحو %1 في كل حوض</translation>
    </message>
    <message>
        <source>%1: no antiperspirant with aluminium for 24 hours</source>
        <translation>%1: لا مضاد تعرّق فيه ألمنيوم منذ 24 ساعة</translation>
    </message>
    <message>
        <source>%1: not shaved for three days</source>
        <translation>%1: لم يُحلق الشعر منذ ثلاثة أيام</translation>
    </message>
    <message>
        <source>My skin is whole where I treat: no cut, no new redness, no blister or burn</source>
        <translation>جلدي سليم في موضع العلاج: لا جرح ولا احمرار جديد ولا بثرة مائية ولا حرق</translation>
    </message>
    <message>
        <source>Ready %1 from %2. %3</source>
        <comment>day, time, what is then fulfilled</comment>
        <translation>ممكن %1 من الساعة %2. %3</translation>
    </message>
    <message>
        <source>Have you lost feeling in the skin, or do you have a nerve disease where the treatment goes?</source>
        <translation>هل فقد جلدك الإحساس، أو هل لديك مرض عصبي في موضع العلاج؟</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?</source>
        <translation>هل فقد جلد %1 الإحساس، أو هل يوجد مرض عصبي في موضع العلاج؟</translation>
    </message>
    <message>
        <source>Pads off</source>
        <translation>انزع اللبّادتين</translation>
    </message>
    <message>
        <source>Dry off</source>
        <translation>جفف</translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s). Today is day %2.</source>
        <translation>
            <numerusform>لا يبقى جلدك جافًا عادةً (%1–%n). نحن الآن في اليوم %2.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى يوم واحد. نحن الآن في اليوم %2.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى يومين. نحن الآن في اليوم %2.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n أيام. نحن الآن في اليوم %2.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n يومًا. نحن الآن في اليوم %2.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n يوم. نحن الآن في اليوم %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>لا يبقى جلدك جافًا عادةً (%1–%n).</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى يوم واحد.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى يومين.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n أيام.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n يومًا.</numerusform>
            <numerusform>يبقى جلدك جافًا عادةً من %1 إلى %n يوم.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>نصف فترات جفافك أقصر من يوم؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
            <numerusform>نصف فترات جفافك أطول من يوم واحد؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
            <numerusform>نصف فترات جفافك أطول من يومين؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
            <numerusform>نصف فترات جفافك أطول من %n أيام؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
            <numerusform>نصف فترات جفافك أطول من %n يومًا؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
            <numerusform>نصف فترات جفافك أطول من %n يوم؛ وأربع من كل خمس تنتهي بين اليوم %1 واليوم %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>That does not belong to this step. Do what the screen says now. If in doubt, lower the current to zero and switch the machine off.</source>
        <translation>هذا لا يخص هذه الخطوة. نفّذ الآن ما يظهر على الشاشة. وعند الشك اخفض التيار إلى الصفر وأطفئ الجهاز.</translation>
    </message>
    <message>
        <source>That did not work. Try again. If it happens again, end any session first, then close Firstdew and open it again.</source>
        <translation>لم ينجح ذلك. حاول مرة أخرى. إذا تكرر الأمر فأنهِ أولًا أي جلسة جارية، ثم أغلق Firstdew وافتحه من جديد.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and no voice here is known to speak your language. Ask somebody to stay beside you.</source>
        <translation>إذا كانت كلتا يديك في الماء فأنت تعتمد على ما تسمعه، ولا يُعرف هنا صوت يتحدث لغتك. اطلب من شخص أن يبقى بجانبك.</translation>
    </message>
    <message>
        <source>Turn the current to zero</source>
        <translation>اخفض التيار إلى الصفر</translation>
    </message>
    <message>
        <source>Firstdew has stopped leading your session. Turn the current to zero, switch the machine off, then open Firstdew.</source>
        <translation>لم يعد Firstdew يقود الجلسة. اخفض التيار إلى الصفر وأطفئ الجهاز، ثم افتح Firstdew.</translation>
    </message>
    <message>
        <source>Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.</source>
        <translation>قد يكون لقصر فترات الجفاف أسباب كثيرة. إذا استمر الأمر، يُرجى إبلاغ التمريض أو الطبيب.</translation>
    </message>
    <message>
        <source>The last session here was half a year ago or more: begin low again, and go by what is comfortable.</source>
        <translation>مضى نصف عام أو أكثر على آخر جلسة هنا: ابدأ من جديد بتيار منخفض، واعتمد على ما هو مريح.</translation>
    </message>
    <message>
        <source>No reading of this current was noted here yet: begin low, and go by what is comfortable.</source>
        <translation>لم تُسجَّل هنا بعد أي قراءة لهذا التيار: ابدأ بتيار منخفض، واعتمد على ما هو مريح.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 characters.</source>
        <translation>عبارة المرور هذه طويلة جدًا. اختر عبارة أقل من 250 حرفًا.</translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>يدوم الجفاف عادةً أقل من يوم منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
            <numerusform>يدوم الجفاف عادةً يومًا واحدًا منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
            <numerusform>يدوم الجفاف عادةً يومين منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
            <numerusform>يدوم الجفاف عادةً %n أيام منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
            <numerusform>يدوم الجفاف عادةً %n يومًا منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
            <numerusform>يدوم الجفاف عادةً %n يوم منذ %1 تقريبًا، مقابل %2 قبل ذلك.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1&#xa0;now, %2&#xa0;before the first session</source>
        <translation>الآن&#xa0;%1، وقبل أول جلسة&#xa0;%2</translation>
    </message>
    <message>
        <source>%1&#xa0;now</source>
        <translation>الآن&#xa0;%1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1&#xa0;now, %2&#xa0;before.</source>
        <translation>درجة الإزعاج: الآن&#xa0;%1، ومن قبل&#xa0;%2.</translation>
    </message>
    <message>
        <source>It rests while you pause this site.</source>
        <translation>تتوقف المقارنة ما دام هذا الموضع موقوفًا مؤقتًا.</translation>
    </message>
    <message>
        <source>It rests while hands and feet are treated together.</source>
        <translation>تتوقف المقارنة ما دامت اليدان والقدمان تُعالَج معًا.</translation>
    </message>
    <message>
        <source>It rests until the next check-in.</source>
        <translation>تتوقف المقارنة حتى التسجيل التالي.</translation>
    </message>
    <message>
        <source>It rests while no session is possible.</source>
        <translation>تتوقف المقارنة ما دامت الجلسات غير ممكنة.</translation>
    </message>
    <message>
        <source>It rests because the sweating is back.</source>
        <translation>تتوقف المقارنة لأن التعرّق عاد.</translation>
    </message>
    <message>
        <source>All pairs are complete.</source>
        <translation>اكتملت كل الأزواج.</translation>
    </message>
    <message>
        <source>It ended early, because the answer was clear.</source>
        <translation>انتهت المقارنة مبكرًا لأن الجواب كان واضحًا.</translation>
    </message>
    <message>
        <source>You left it.</source>
        <translation>انتهت المقارنة بطلبك.</translation>
    </message>
    <message>
        <source>It ended because of the skin.</source>
        <translation>انتهت المقارنة بسبب الجلد.</translation>
    </message>
    <message>
        <source>It ended because the sweating was back.</source>
        <translation>انتهت المقارنة لأن التعرّق عاد.</translation>
    </message>
    <message>
        <source>It ended with the new course.</source>
        <translation>انتهت المقارنة ببدء الدورة الجديدة.</translation>
    </message>
    <message>
        <source>It ended with the other treatment.</source>
        <translation>انتهت المقارنة ببدء العلاج الآخر.</translation>
    </message>
    <message>
        <source>It ended because three sessions in a row did not count.</source>
        <translation>انتهت المقارنة لأن ثلاث جلسات متتالية لم تُحتسب.</translation>
    </message>
    <message>
        <source>Whether the shorter session holds as long could not be told.</source>
        <translation>لم يتسنَّ معرفة ما إذا كان أثر الجلسة الأقصر يدوم المدة نفسها.</translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو أقل من يوم، والجلسة المعتادة %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو يوم واحد، والجلسة المعتادة %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو يومين، والجلسة المعتادة %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو %n أيام، والجلسة المعتادة %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو %n يومًا، والجلسة المعتادة %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر المدة نفسها تقريبًا: نحو %n يوم، والجلسة المعتادة %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو أقل من يوم بدلًا من %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو يوم واحد بدلًا من %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو يومين بدلًا من %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو %n أيام بدلًا من %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو %n يومًا بدلًا من %1.</numerusform>
            <numerusform>دام أثر الجلسة الأقصر مدة أقل: نحو %n يوم بدلًا من %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>بحسب فترات الجفاف، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
            <numerusform>بحسب فترة جفاف واحدة، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
            <numerusform>بحسب فترتي جفاف، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
            <numerusform>بحسب %n فترات جفاف، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
            <numerusform>بحسب %n فترة جفاف، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
            <numerusform>بحسب %n فترة جفاف، يدوم أثرها على الأرجح من %1 إلى %2 من المدة المعتادة.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في أزواج من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في زوج واحد من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في زوجين من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في %n أزواج من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في %n زوجًا من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
            <numerusform>تقارن جلسة مدتها %1 بجلستك المعتادة ومدتها %2، في %n زوج من فترات الجفاف. والصدفة تقرر أيهما تأتي أولًا.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only the time is shorter. Current and limits stay as they are.</source>
        <translation>الوقت وحده أقصر. ويبقى التيار والحدود كما هي.</translation>
    </message>
    <message>
        <source>Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is still settling on the day after a session. So you may be clammy more often.</source>
        <translation>في هذه الأثناء لا يطلب التوقع أي جلسة داعمة. يطلبها أول يوم رطب أثناء الراحة، ما لم يكن الجلد في طور الاستقرار في اليوم التالي للجلسة. لذا قد تكثر الرطوبة لديك.</translation>
    </message>
    <message>
        <source>Only sessions that the app leads to the end count. Check in every day.</source>
        <translation>لا تُحسب إلا الجلسات التي يقودها التطبيق حتى نهايتها. سجّل كل يوم.</translation>
    </message>
    <message>
        <source>It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin or the sweating requires it. You can leave at any time.</source>
        <translation>قد تستغرق أشهرًا. وإذا دام أثر الأقصر أقل بوضوح، أو اقتضى ذلك الجلد أو التعرّق، تنتهي قبل ذلك. ويمكنك تركها في أي وقت.</translation>
    </message>
    <message>
        <source>Agree on it with your prescriber or nurse first, and follow your machine&apos;s instructions.</source>
        <translation>اتفق على ذلك أولًا مع طبيبك أو التمريض، واتبع تعليمات جهازك.</translation>
    </message>
    <message>
        <source>Pair %1 of %2.</source>
        <translation>الزوج %1 من %2.</translation>
    </message>
    <message>
        <source>Until then your sessions are the usual ones, and the forecast calls for top-ups again.</source>
        <translation>حتى ذلك الحين تكون الجلسات هي المعتادة، ويعود التوقع إلى طلب الجلسات الداعمة.</translation>
    </message>
    <message>
        <source>This dry spell followed the shorter session.</source>
        <translation>فترة الجفاف هذه تلت الجلسة الأقصر.</translation>
    </message>
    <message>
        <source>This dry spell followed the usual session.</source>
        <translation>فترة الجفاف هذه تلت الجلسة المعتادة.</translation>
    </message>
    <message>
        <source>The next session is the shorter one: %1.</source>
        <translation>الجلسة التالية هي الأقصر: %1.</translation>
    </message>
    <message>
        <source>The next session is the usual one: %1.</source>
        <translation>الجلسة التالية هي المعتادة: %1.</translation>
    </message>
    <message>
        <source>The forecast calls for no top-up meanwhile. A clammy day at rest does.</source>
        <translation>في هذه الأثناء لا يطلب التوقع أي جلسة داعمة. يطلبها يوم رطب أثناء الراحة.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>من %1 إلى %2.</translation>
    </message>
    <message>
        <source>Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.</source>
        <translation>عادت الجلسات إلى مدتها المعتادة. تحدّث مع طبيبك أو التمريض عن الجواب.</translation>
    </message>
    <message>
        <source>Shorter session compared with the usual one since %1</source>
        <translation>مقارنة جلسة أقصر بالجلسة المعتادة منذ %1</translation>
    </message>
    <message>
        <source>pair %1 of %2; no answer yet</source>
        <translation>الزوج %1 من %2؛ لا جواب بعد</translation>
    </message>
    <message>
        <source>You compare: this time the shorter session, %1.</source>
        <translation>مقارنة جارية: هذه المرة الجلسة الأقصر، %1.</translation>
    </message>
    <message>
        <source>You compare: this time the usual session, %1.</source>
        <translation>مقارنة جارية: هذه المرة الجلسة المعتادة، %1.</translation>
    </message>
    <message>
        <source>You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a clammy day at rest does.</source>
        <translation>تقارن مدد الجلسات: الزوج %1 من %2. وفي هذه الأثناء لا يطلب التوقع أي جلسة داعمة؛ يطلبها يوم رطب أثناء الراحة.</translation>
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
        <translation>أيام الجفاف بعد كل جلسة، الأحدث أخيرًا. رأس مدبَّب: كان الجلد ما زال جافًا حين جاءت الجلسة التالية، أو هو جاف اليوم.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>يظهر هنا عمود لكل فترة جفاف متى بدأت الدورة.</translation>
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
            <numerusform>%1: لا يوم جاف</numerusform>
            <numerusform>%1: يوم جاف واحد</numerusform>
            <numerusform>%1: يومان جافان</numerusform>
            <numerusform>%1: %n أيام جافة</numerusform>
            <numerusform>%1: %n يومًا جافًا</numerusform>
            <numerusform>%1: %n يوم جاف</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>Write down who approved it, so that the summary can say so.</source>
        <translation>اكتب اسم من صرّح به، ليظهر في الملخص.</translation>
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
            <numerusform>%1: لا أيام</numerusform>
            <numerusform>%1: يوم واحد</numerusform>
            <numerusform>%1: يومان</numerusform>
            <numerusform>%1: %n أيام</numerusform>
            <numerusform>%1: %n يومًا</numerusform>
            <numerusform>%1: %n يوم</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>لم يُسجَّل شيء في هذه المدة</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>لا جلسات</numerusform>
            <numerusform>جلسة واحدة</numerusform>
            <numerusform>جلستان</numerusform>
            <numerusform>%n جلسات</numerusform>
            <numerusform>%n جلسةً</numerusform>
            <numerusform>%n جلسة</numerusform>
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
            <numerusform>لا أيام رطبة من أصل %1 من الأيام المسجّلة</numerusform>
            <numerusform>يوم رطب واحد من أصل %1 من الأيام المسجّلة</numerusform>
            <numerusform>يومان رطبان من أصل %1 من الأيام المسجّلة</numerusform>
            <numerusform>%n أيام رطبة من أصل %1 من الأيام المسجّلة</numerusform>
            <numerusform>%n يومًا رطبًا من أصل %1 من الأيام المسجّلة</numerusform>
            <numerusform>%n يوم رطب من أصل %1 من الأيام المسجّلة</numerusform>
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
