return { title = "second pathway, 2021", cite = "1", about = "design", check = function() review("why") end }
