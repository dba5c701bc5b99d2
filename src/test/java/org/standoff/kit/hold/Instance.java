package org.standoff.kit.hold;

import javax.sql.DataSource;
import org.standoff.kit.PlainTransactions;
import org.standoff.kit.house.Houses;
import org.standoff.kit.stock.PlainStock;
import org.standoff.kit.stock.WholeKit;

/** What one instance of the service has to hold with, on connections of its own. */
public final class Instance {

  public final PlainTransactions transactions;
  public final Holds holds;
  public final DeskSteps desk;
  public final HouseSteps house;
  public final Diary diary;
  public final SecondHolds secondHolds;
  public final Expiry expiry;
  public final WholeKit wholeKit;

  public Instance(DataSource connections, Houses houses) {
    transactions = new PlainTransactions(connections);
    Attempts attempts = new Attempts(transactions);
    Handovers handovers = new Handovers(houses);
    secondHolds = new SecondHolds(handovers);
    expiry = new Expiry(attempts, secondHolds);
    Ledger ledger = new Ledger(attempts, expiry);
    holds = new Holds(ledger, attempts, expiry, handovers);
    desk = new DeskSteps(ledger, handovers, secondHolds);
    house = new HouseSteps(ledger, handovers, secondHolds);
    wholeKit =
        PlainStock.wholeKit(transactions, new PublishedUnits(secondHolds), "core/a", "core/b");
    diary = new Diary(attempts, expiry);
  }
}
