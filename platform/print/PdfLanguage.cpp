#include "print/PdfLanguage.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

namespace firstdew::print {

facts::Result<std::string> inLanguage(std::string_view bytes, const std::string& language)
{
    try {
        QPDF pdf;
        pdf.processMemoryFile("summary", bytes.data(), bytes.size());
        pdf.getRoot().replaceKey("/Lang", QPDFObjectHandle::newString(language));
        QPDFWriter writer(pdf);
        writer.setOutputMemory();
        writer.write();
        const auto out = writer.getBufferSharedPointer();
        return std::string(reinterpret_cast<const char*>(out->getBuffer()), out->getSize());
    } catch (const std::exception& e) {
        return facts::Error{"pdf-failed", "",
                            std::string("the page could not be finished; nothing was written: ") + e.what()};
    }
}

} // namespace firstdew::print
