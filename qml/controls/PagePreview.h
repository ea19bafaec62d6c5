#pragma once

#include "Drawn.h"
#include "SummaryModel.h"

namespace firstdew::controls {

/// The first page for the prescriber as it would be made now, as wide as the item and as high as paper.
class PagePreview : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(firstdew::viewmodels::SummaryModel* summary READ summary WRITE setSummary NOTIFY summaryChanged)

public:
    explicit PagePreview(QQuickItem* parent = nullptr) : Drawn(parent) {}
    [[nodiscard]] viewmodels::SummaryModel* summary() const { return m_summary; }
    void setSummary(viewmodels::SummaryModel* summary);

signals:
    void summaryChanged();

protected:
    void draw(QPainter* painter) override;

private:
    viewmodels::SummaryModel* m_summary = nullptr;
};

} // namespace firstdew::controls
