#include "late/Parts.h"
#include "print/PdfLanguage.h"

FIRSTDEW_PART(Pdf, {firstdew::print::inLanguage});
