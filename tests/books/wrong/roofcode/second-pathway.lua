return { title = "second-pathway", cite = "1", about = "design", check = function() review("why") end }
