package sheathwright.job.life;

import sheathwright.job.table.JobText;

/** The tables of a small job whose deck is open, which a test may spoil. All of it is invented. */
public final class LifeText {

  private LifeText() {}

  /** Two planes of 8 places each, three marks, two change orders of which one is approved. */
  public static JobText opened() {
    return JobText.small()
        .withLines(
            "job",
            "stage,opened,",
            "asked_on,2027-04-20,",
            "looked_on,2027-04-28,",
            "agreed_on,2027-05-06,",
            "opened_on,2027-05-10,",
            "pre_agreed_sheets,2,",
            "pre_agreed_usd,200,")
        .withTable(
            "marks",
            """
            mark,plane,finding,sheet,along_in,up_in,width_in,height_in,stage_found,on,action
            a,front,rot,front-1-2,,,,,opened,2027-05-10,
            b,front,loose,front-2-1,,,,,opened,2027-05-10,refasten
            c,back,rot,,100,8,10,6,surveyed,2027-04-28,
            """)
        .withTable("reports", "report,seen,where,evidence\nF-1,split,rafter 3 of front,\n")
        .withTable("sent", "document,file,file_sha256,record_sha256\n1 issue 1,1.xlsx,00,11\n")
        .withTable(
            "agreed",
            """
            item,unit,usd,included,credit_usd,most,words
            sheet,half,90,2,50,10,a deck sheet
            refasten,place,8,,,,a sheet refastened
            total,,1200,,,,all of it
            """)
        .withTable(
            "stages", "stage,part_pct,usd,when\ndeposit,10,,on signing\nlast,90,,when it is done\n")
        .withTable(
            "orders",
            """
            order,on,usd,days,status,approved_by,approved_how,approved_on
            01,2027-05-10,90,0.25,approved,Nobody at all,signed,2027-05-11
            02,2027-05-12,8,0.25,offered,,,
            """)
        .withTable(
            "order_lines",
            """
            order,item,unit,quantity,usd,marks
            01,sheet,half,1,90,a: 1
            02,refasten,place,1,8,b: 1
            """)
        .withTable("photos", "photo,mark,report,sheet,view\na.jpg,a,,,open\nf.jpg,,F-1,,wide\n")
        .withTable(
            "zones",
            "zone,plane,from_course,to_course,places,seen,seen_bad\nattic,front,1,3,8,6,1\nrest,back,,,8,,\n")
        .withTable(
            "inspections",
            "what,required,found,unit,sense,result\nnails,6,6,in,at-most,pass\npanel,32/16,32/16,,is,pass\n");
  }
}
