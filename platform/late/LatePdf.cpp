// Stands in for firstdew_pdf.
#include "late/Late.h"
#include "late/Missing.h"
#include "late/Parts.h"
#include "print/PdfLanguage.h"

firstdew::facts::Result<std::string> firstdew::print::inLanguage(std::string_view pdf, const std::string& language)
{
    static const auto* offer = static_cast<const late::Pdf*>(late::offered("pdf"));
    return offer != nullptr ? offer->inLanguage(pdf, language) : late::missing();
}
