package org.firstdew;

import android.content.Intent;
import android.os.Build;
import android.service.quicksettings.Tile;
import android.service.quicksettings.TileService;

/** The quick settings tile: opens the check-in. A tile is one button, so it cannot ask for one of four levels. */
public final class CheckInTile extends TileService {
    @Override
    public void onStartListening() {
        Tile tile = getQsTile();
        if (tile == null)
            return;
        tile.setState(Tile.STATE_INACTIVE); // it can be pressed, and nothing is on
        tile.updateTile();
    }

    @Override
    public void onClick() {
        if (isLocked())
            unlockAndRun(new Runnable() {
                @Override
                public void run() {
                    open();
                }
            }); // the record is not for whoever holds a locked phone
        else
            open();
    }

    @SuppressWarnings("deprecation") // the only way before Android 14
    private void open() {
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.UPSIDE_DOWN_CAKE)
            startActivityAndCollapse(Notices.open(this, "today", "tile"));
        else
            startActivityAndCollapse(new Intent(this, OpenActivity.class).putExtra(OpenActivity.PLACE, "today").addFlags(Intent.FLAG_ACTIVITY_NEW_TASK));
    }
}
