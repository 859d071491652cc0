return {
  title = "Words for days, sets and lists",
  cite = "none",
  about = "project",
  check = function(project, book, design)
    shall.be("It is planned after it is asked for", project.planned_start > project.permit_application_date)
    should.be("Not before", project.permit_application_date <= project.planned_start)
    shall.be_more_than("Planned against asked for", project.planned_start, project.permit_application_date)
    shall.be_less_than("And the other way round", project.permit_application_date, project.planned_start)
    shall.be("The same day is the same", same(project.planned_start, project.planned_start))
    should.be_equal("On the very day", project.planned_start, project.permit_application_date)
    should.be("All of two", project.scope:has("roof-mounted PV", "panel replacement"))
    shall.be_at_least("Kinds of work", project.scope:count(), 1)
    shall.be_equal("By its sign", #project.scope, project.scope:count())
    shall.be_equal("Planes by their sign", #design.roof.planes, design.roof.planes:count())
    shall.be("Nothing beyond the last", not design.roof.planes[design.roof.planes:count() + 1])
    local string = design.strings[1]
    if string and string.combiner then review("A combiner", string.combiner) end
    should.be_equal("Edition", book:edition("nec"), "2023")
    if same(book:edition("nec"), "2017") then shall.be_equal("No such code", book:edition("none-such"), "1") end
  end,
}
