# Nothing to set up without a screen: what is placed in documents imports garboard_wb.objects by itself.
