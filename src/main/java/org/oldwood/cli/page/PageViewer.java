package org.oldwood.cli.page;

import java.io.IOException;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;

/** Reads the garden anew for one look of the page: what others noted meanwhile is in it. */
final class PageViewer extends GardenCommand {
    PageView view() throws IOException { return new PageData(folder(), GardenPlan.of(this, folder()), units()).view(); }

    @Override
    public int run() throws IOException { throw new IllegalStateException("the page's view is no command"); }
}
