"""Two records or two guides told apart in the trade's terms, with the steps that each difference touches."""
