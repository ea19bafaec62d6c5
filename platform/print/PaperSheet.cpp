#include "print/PaperSheet.h"

namespace firstdew::print {

QString listed(const QStringList& parts) { return parts.join(Page::tr(", ", "between the parts of a list")); }

} // namespace firstdew::print
